package leverwright.face.desk.editor;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import leverwright.face.desk.model.ScriptAdvice;
import org.fxmisc.richtext.event.MouseOverTextEvent;
import org.fxmisc.richtext.model.TwoDimensional.Bias;

/**
 * Words beside a script: the parameters of the call in whose brackets one writes; what the word under the mouse means, or by
 * F1 the word at the caret; and what is wrong where an error is marked.
 */
final class ScriptWords {

    private static final Duration HOVER = Duration.ofMillis(450);

    private final SourceArea area;
    private final String cell;
    private final ScriptAdvice advice;
    private final Colouring colouring;
    private final Floating hint = new Floating("hint", false);
    private final Floating words = new Floating("about-word", true);
    private int hintFor = -1;
    private long asked;

    /**
     * Says words about a script.
     *
     * @param area the script's area
     * @param cell the script's id
     * @param advice whom to ask
     * @param colouring the colours with the marks
     */
    ScriptWords(SourceArea area, String cell, ScriptAdvice advice, Colouring colouring) {
        this.area = area;
        this.cell = cell;
        this.advice = advice;
        this.colouring = colouring;
        area.setMouseOverTextDelay(HOVER);
        area.addEventHandler(
                MouseOverTextEvent.MOUSE_OVER_TEXT_BEGIN,
                event -> about(
                        event.getCharacterIndex(),
                        new BoundingBox(
                                event.getScreenPosition().getX(),
                                event.getScreenPosition().getY() - 8,
                                1,
                                20)));
        area.addEventHandler(MouseOverTextEvent.MOUSE_OVER_TEXT_END, event -> words.hide());
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    private void key(KeyEvent key) {
        boolean plain = !key.isShiftDown() && !key.isShortcutDown() && !key.isAltDown();
        if (key.getCode() == KeyCode.F1 && plain) {
            key.consume();
            area.getCaretBounds().ifPresent(bounds -> about(area.getCaretPosition(), bounds));
        } else if (key.getCode() == KeyCode.F8 && plain) {
            goToError(key);
        } else if (key.getCode() == KeyCode.ESCAPE && (hint.isShowing() || words.isShowing())) {
            key.consume();
            hide();
        } else if (words.isShowing() && key.getCode() != KeyCode.SHIFT && key.getCode() != KeyCode.CONTROL) {
            words.hide();
        }
    }

    private void goToError(KeyEvent key) {
        List<SourceMark> marks = colouring.marks(Colouring.Mark.ERROR).stream()
                .sorted(Comparator.comparingInt(SourceMark::line).thenComparingInt(SourceMark::from))
                .toList();
        marks.stream()
                .filter(this::isBehindCaret)
                .findFirst()
                .or(() -> marks.stream().findFirst())
                .ifPresent(mark -> {
                    key.consume();
                    area.moveTo(mark.line(), Math.min(mark.from(), area.getParagraphLength(mark.line())));
                    area.requestFollowCaret();
                    area.getCaretBounds().ifPresent(bounds -> showWords(bounds, wrong(List.of(mark))));
                });
    }

    private boolean isBehindCaret(SourceMark mark) {
        int line = area.getCurrentParagraph();
        return mark.line() > line || (mark.line() == line && mark.from() > area.getCaretColumn());
    }

    private static List<Node> wrong(List<SourceMark> marks) {
        return marks.stream()
                .map(mark -> (Node) Floating.label("✕ " + mark.words(), "script-problem"))
                .toList();
    }

    void hide() {
        hintFor = -1;
        hint.hide();
        words.hide();
    }

    private List<SourceMark> wrongAt(int offset) {
        var place = area.offsetToPosition(Math.min(offset, area.getLength()), Bias.Forward);
        return colouring.marks(Colouring.Mark.ERROR).stream()
                .filter(mark -> mark.line() == place.getMajor()
                        && mark.from() <= place.getMinor()
                        && place.getMinor() <= mark.to())
                .toList();
    }

    private void about(int offset, Bounds place) {
        List<SourceMark> wrong = wrongAt(offset);
        if (!wrong.isEmpty()) {
            showWords(place, wrong(wrong));
            return;
        }
        var at = area.offsetToPosition(Math.min(offset, area.getLength()), Bias.Forward);
        String line = area.getText(at.getMajor());
        Optional<ScriptLexer.Piece> piece =
                ScriptLexer.line(line, colouring.stateBefore(at.getMajor())).pieces().stream()
                        .filter(each -> each.start() <= at.getMinor() && at.getMinor() <= each.end())
                        .filter(each ->
                                each.kind() == ScriptLexer.Kind.NAME || each.kind() == ScriptLexer.Kind.CONSTANT)
                        .findFirst();
        piece.ifPresent(found -> aboutWord(
                line.substring(found.start(), found.end()),
                area.getAbsolutePosition(at.getMajor(), 0) + found.end(),
                place));
    }

    private void aboutWord(String word, int end, Bounds place) {
        String text = area.getText();
        int bracket = end;
        while (bracket < text.length() && Character.isWhitespace(text.charAt(bracket))) {
            bracket++;
        }
        boolean call = bracket < text.length() && text.charAt(bracket) == '(';
        long number = ++asked;
        advice.signatures(cell, text, call ? bracket + 1 : end).thenAccept(told -> {
            if (number != asked) {
                return;
            }
            List<Signature> known = told.stream()
                    .flatMap(each -> Signature.of(each).stream())
                    .filter(each -> each.name().equals(word))
                    .toList();
            showWords(place, known.isEmpty() ? ApiWords.of(word) : ApiWords.of(known));
        });
    }

    private void showWords(Bounds place, List<Node> said) {
        if (said.isEmpty()) {
            words.hide();
            return;
        }
        words.say(said);
        words.show(area, place, false);
    }

    /** Tells that something was typed or deleted and the caret stands behind it. */
    void typed(String inserted) {
        if (inserted.endsWith("(") || inserted.endsWith(",")) {
            hint();
        } else if (hint.isShowing()) {
            follow();
        }
    }

    /** Tells that the caret was moved. */
    void moved() {
        if (hint.isShowing()) {
            follow();
        }
    }

    private void follow() {
        Optional<CallAtCaret> call = CallAtCaret.in(area.getText(), area.getCaretPosition());
        if (call.isEmpty()) {
            hint.hide();
            hintFor = -1;
        } else {
            hint();
        }
    }

    /** Shows the parameters of the call at the caret. */
    void hint() {
        String text = area.getText();
        int caret = area.getCaretPosition();
        Optional<CallAtCaret> call = CallAtCaret.in(text, caret);
        if (call.isEmpty() || !area.isFocused()) {
            return;
        }
        int bracket = call.get().bracket();
        advice.signatures(cell, text, bracket + 1).thenAccept(told -> {
            List<Signature> methods = told.stream()
                    .flatMap(each -> Signature.of(each).stream())
                    .filter(Signature::method)
                    .filter(each -> !each.parameters().isEmpty())
                    .toList();
            Optional<CallAtCaret> now = CallAtCaret.in(area.getText(), area.getCaretPosition());
            boolean still = now.isPresent() && now.get().bracket() == bracket && area.isFocused();
            if (methods.isEmpty() || !still) {
                if (still || hintFor != bracket) {
                    hint.hide();
                }
                return;
            }
            hintFor = bracket;
            hint.say(lines(methods, now.map(CallAtCaret::parameter).orElse(0)));
            area.getCaretBounds().ifPresent(bounds -> hint.show(area, bounds, true));
        });
    }

    private static List<Node> lines(List<Signature> methods, int parameter) {
        List<Node> lines = new ArrayList<>();
        for (Signature method : methods) {
            int last = method.parameters().size() - 1;
            boolean many = last >= 0 && method.parameters().get(last).contains("...");
            int here = many ? Math.min(parameter, last) : parameter;
            if (here > last && methods.size() > 1) {
                continue;
            }
            lines.add(line(method, here));
            if (lines.size() <= 2) {
                ApiIndex.get().of(method).stream()
                        .findFirst()
                        .filter(member -> here < member.parameters().size())
                        .map(member -> member.parameters().get(here).sentence())
                        .filter(sentence -> !sentence.isEmpty())
                        .ifPresent(sentence -> lines.add(Floating.label(sentence, "parameter")));
            }
        }
        return lines;
    }

    private static TextFlow line(Signature method, int here) {
        TextFlow flow = new TextFlow();
        flow.getStyleClass().addAll("code", "signature");
        flow.getChildren().add(part(method.name() + "(", false));
        for (int i = 0; i < method.parameters().size(); i++) {
            flow.getChildren().add(part(i == 0 ? "" : ", ", false));
            flow.getChildren().add(part(method.parameters().get(i), i == here));
        }
        String type = method.type().equals("void") ? ")" : ")  → " + method.type();
        flow.getChildren().add(part(type, false));
        return flow;
    }

    private static Text part(String text, boolean here) {
        Text part = new Text(text);
        part.getStyleClass().add("text");
        if (here) {
            part.getStyleClass().add("parameter-here");
        }
        return part;
    }

    void dispose() {
        hide();
    }
}
