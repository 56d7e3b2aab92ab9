package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;

/** What is said about a member or a type, as lines to read. */
final class ApiWords {

    /** More meanings of one word than this are not listed. */
    private static final int MOST = 6;

    private ApiWords() {}

    /** Returns what a signature means, in words; only the signature where the index does not know it. */
    static List<Node> of(List<Signature> signatures) {
        List<Node> lines = new ArrayList<>();
        Map<String, List<Node>> known = new LinkedHashMap<>();
        for (Signature each : signatures) {
            known.putIfAbsent(each.type() + " " + each.call(), about(each));
        }
        known.values().stream().limit(MOST).forEach(lines::addAll);
        return lines;
    }

    private static List<Node> about(Signature signature) {
        List<Node> lines = new ArrayList<>();
        lines.add(Floating.label(signature.type() + " " + signature.call(), "code", "signature"));
        Optional<ApiIndex.Member> member = ApiIndex.get().of(signature).stream().findFirst();
        if (member.isPresent()) {
            lines.addAll(told(member.get(), signature.type()));
        } else if (!signature.method()) {
            ApiIndex.get()
                    .type(signature.type().replaceAll("<.*", ""))
                    .ifPresent(type -> lines.add(Floating.label(type.sentence())));
        }
        return lines;
    }

    private static List<Node> told(ApiIndex.Member member, String type) {
        List<Node> lines = new ArrayList<>();
        if (!member.sentence().isEmpty()) {
            lines.add(Floating.label(member.sentence()));
        }
        for (ApiIndex.Parameter each : member.parameters()) {
            if (!each.sentence().isEmpty()) {
                lines.add(Floating.label(each.name() + ": " + each.sentence(), "parameter"));
            }
        }
        String unit = ApiIndex.unit(type);
        if (!member.returned().isEmpty()) {
            lines.add(Floating.label("gives " + member.returned(), "parameter"));
        }
        if (!unit.isEmpty() && !unit.equals("1")) {
            lines.add(Floating.label("shown in " + unit, "quiet", "small"));
        }
        return lines;
    }

    /** Returns what the index alone says about a word of a script; empty when it says nothing. */
    static List<Node> of(String word) {
        List<Node> lines = new ArrayList<>();
        ApiIndex index = ApiIndex.get();
        index.type(word).ifPresent(type -> {
            lines.add(Floating.label(type.kind() + " " + type.name(), "code", "signature"));
            lines.add(Floating.label(type.sentence()));
        });
        List<ApiIndex.Member> members = index.named(word);
        List<ApiIndex.Member> words =
                members.stream().filter(ApiIndex.Member::word).toList();
        for (ApiIndex.Member each :
                (words.isEmpty() ? members : words).stream().limit(MOST).toList()) {
            lines.add(Floating.label(
                    words.isEmpty() ? each.owner() + ": " + each.signature() : each.signature(), "code", "signature"));
            lines.addAll(told(each, each.type()));
        }
        return lines;
    }
}
