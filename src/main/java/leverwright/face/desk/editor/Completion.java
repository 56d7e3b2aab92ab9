package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.Duration;
import leverwright.face.desk.model.ScriptAdvice;
import leverwright.workbook.session.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * What may be written at the caret, as a list that narrows while one types. It opens behind a dot, after three letters of a
 * word, and by Ctrl+Space; Enter or Tab takes the chosen one, Escape closes the list.
 */
final class Completion {

    private static final int MOST = 60;
    private static final int ROWS = 9;
    private static final double ROW_HEIGHT = 1.75;
    private static final double USUAL_TEXT = 13;
    private static final int LETTERS = 3;
    private static final int TYPED_FOR = 12;

    /** Members of every object, which nobody looks for. */
    private static final Set<String> EVERYWHERE = Set.of(
            "equals", "getClass", "hashCode", "notify", "notifyAll", "wait", "toString", "class", "finalize", "clone");

    private static final Pattern OURS = Pattern.compile("Above\\d+.*|Caret|Inner");

    /** A suggestion with what is known of it. */
    private static final class Choice {
        final Suggestion suggestion;
        String type = "";
        List<Signature> signatures = List.of();

        Choice(Suggestion suggestion) {
            this.suggestion = suggestion;
        }

        String name() {
            String text = suggestion.text();
            int bracket = text.indexOf('(');
            return bracket < 0 ? text : text.substring(0, bracket);
        }
    }

    private final SourceArea area;
    private final String cell;
    private final ScriptAdvice advice;
    private final Runnable called;
    private final Floating floating = new Floating("completion", true);
    private final ListView<Choice> list = new ListView<>();
    private final javafx.scene.layout.VBox words = new javafx.scene.layout.VBox();
    private final PauseTransition rest = new PauseTransition(Duration.millis(120));
    private List<Choice> all = List.of();
    private int from;
    private long asked;

    /**
     * Completes what is written in a script.
     *
     * @param area the script's area
     * @param cell the script's id
     * @param advice whom to ask
     * @param called what to do after a method was taken whose brackets are to be filled
     */
    Completion(SourceArea area, String cell, ScriptAdvice advice, Runnable called) {
        this.area = area;
        this.cell = cell;
        this.advice = advice;
        this.called = called;
        list.setFocusTraversable(false);
        list.setAccessibleText("What may be written here");
        list.setCellFactory(view -> new Row());
        list.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> tell(now));
        list.setOnMouseClicked(event -> take());
        words.getStyleClass().add("completion-words");
        floating.leaf().getChildren().addAll(list, words);
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        rest.setOnFinished(event -> ask(false));
    }

    boolean isShowing() {
        return floating.isShowing();
    }

    void hide() {
        asked++;
        rest.stop();
        floating.hide();
    }

    private void key(KeyEvent key) {
        if (key.getCode() == KeyCode.SPACE && (key.isControlDown() || key.isShortcutDown())) {
            key.consume();
            ask(true);
            return;
        }
        if (!floating.isShowing() || key.isShortcutDown() || key.isAltDown()) {
            return;
        }
        switch (key.getCode()) {
            case DOWN -> move(key, 1);
            case UP -> move(key, -1);
            case PAGE_DOWN -> move(key, ROWS - 1);
            case PAGE_UP -> move(key, 1 - ROWS);
            case ENTER, TAB -> {
                key.consume();
                take();
            }
            case ESCAPE -> {
                key.consume();
                hide();
            }
            case LEFT, RIGHT, HOME, END -> hide();
            default -> {
                // letters narrow the list
            }
        }
    }

    private void move(KeyEvent key, int by) {
        key.consume();
        int size = list.getItems().size();
        int to = Math.max(0, Math.min(size - 1, list.getSelectionModel().getSelectedIndex() + by));
        list.getSelectionModel().select(to);
        list.scrollTo(Math.max(0, to - ROWS / 2));
    }

    /** Tells that something was typed or deleted and the caret stands behind it. */
    void typed(String inserted) {
        int caret = area.getCaretPosition();
        if (floating.isShowing()) {
            if (caret >= from && isWord(area.getText(from, caret))) {
                narrow();
            } else {
                hide();
            }
        }
        if (inserted.equals(".")) {
            rest.playFromStart();
        } else if (inserted.length() == 1 && Character.isJavaIdentifierPart(inserted.charAt(0)) && !isShowing()) {
            String line = area.getText(area.getCurrentParagraph()).substring(0, area.getCaretColumn());
            int start = wordStart(line);
            boolean word = start < line.length() && Character.isJavaIdentifierStart(line.charAt(start));
            boolean member = start > 0 && line.charAt(start - 1) == '.';
            if (word && (member || line.length() - start >= LETTERS) && !isInTextOrRemark(line)) {
                rest.playFromStart();
            }
        } else if (!inserted.isEmpty()) {
            rest.stop();
        }
    }

    private static boolean isInTextOrRemark(String line) {
        List<ScriptLexer.Piece> pieces =
                ScriptLexer.line(line, ScriptLexer.State.SCRIPT).pieces();
        if (pieces.isEmpty()) {
            return false;
        }
        ScriptLexer.Kind last = pieces.get(pieces.size() - 1).kind();
        return last == ScriptLexer.Kind.REMARK || last == ScriptLexer.Kind.TEXT || last == ScriptLexer.Kind.DIGITS;
    }

    private static int wordStart(String line) {
        int start = line.length();
        while (start > 0 && Character.isJavaIdentifierPart(line.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static boolean isWord(String text) {
        return text.chars().allMatch(Character::isJavaIdentifierPart);
    }

    private void ask(boolean wanted) {
        String text = area.getText();
        int caret = area.getCaretPosition();
        long number = ++asked;
        if (!advice.isReady()) {
            offer(fromIndex(text, caret), caret, wanted);
        }
        advice.completions(cell, text, caret).thenAccept(found -> {
            boolean late = found.isEmpty() && !advice.isReady();
            if (number == asked && caret == area.getCaretPosition() && area.isFocused() && !late) {
                offer(found, caret, wanted);
            }
        });
    }

    /** What can be suggested before any script was compiled: the words that a cell says without a class. */
    private static List<Suggestion> fromIndex(String text, int caret) {
        int start = wordStart(text.substring(0, caret));
        if (start > 0 && text.charAt(start - 1) == '.') {
            return List.of();
        }
        String begun = text.substring(start, caret);
        return ApiIndex.get().words().stream()
                .filter(member -> member.name().startsWith(begun))
                .map(member -> new Suggestion(
                        start,
                        member.method() ? member.name() + (member.parameters().isEmpty() ? "()" : "(") : member.name(),
                        member.method() ? Suggestion.Kind.METHOD : Suggestion.Kind.NAME,
                        false))
                .distinct()
                .toList();
    }

    private void offer(List<Suggestion> found, int caret, boolean wanted) {
        from = found.isEmpty() ? caret : found.get(0).from();
        String begun = area.getText(from, caret);
        boolean afterDot = from > 0 && area.getText(from - 1, from).equals(".");
        boolean member = afterDot || !begun.isEmpty();
        all = found.stream()
                .filter(each ->
                        each.from() == from && !OURS.matcher(each.text()).matches())
                .map(Choice::new)
                .filter(each -> !(afterDot && EVERYWHERE.contains(each.name())))
                .filter(each -> member || each.suggestion.fits() || isKnown(each))
                .sorted(Comparator.<Choice>comparingInt(each -> each.suggestion.fits() ? 0 : isKnown(each) ? 1 : 2)
                        .thenComparing(each -> each.name().toLowerCase(Locale.ROOT)))
                .toList();
        boolean complete = all.size() == 1 && all.get(0).suggestion.text().equals(begun);
        if (all.isEmpty() || (complete && !wanted)) {
            floating.hide();
            return;
        }
        all.forEach(Completion::knowFromIndex);
        narrow();
        askTypes();
    }

    /** Whether this is ours, and not one of the thousand classes of Java. */
    private static boolean isKnown(Choice choice) {
        ApiIndex index = ApiIndex.get();
        return index.named(choice.name()).stream().anyMatch(ApiIndex.Member::word)
                || Character.isLowerCase(choice.name().charAt(0))
                || index.type(choice.name()).isPresent();
    }

    /** Takes the type from the index where every member of the name has the same. */
    private static void knowFromIndex(Choice choice) {
        if (choice.suggestion.kind() == Suggestion.Kind.TYPE) {
            choice.type =
                    ApiIndex.get().type(choice.name()).map(ApiIndex.Type::kind).orElse("");
            return;
        }
        List<String> types = ApiIndex.get().named(choice.name()).stream()
                .filter(each -> each.method() == (choice.suggestion.kind() == Suggestion.Kind.METHOD))
                .map(ApiIndex.Member::type)
                .distinct()
                .toList();
        choice.type = types.size() == 1 ? types.get(0) : "";
    }

    private void narrow() {
        String begun = area.getText(from, area.getCaretPosition());
        String small = begun.toLowerCase(Locale.ROOT);
        Choice chosen = list.getSelectionModel().getSelectedItem();
        List<Choice> fitting = all.stream()
                .filter(each -> each.name().toLowerCase(Locale.ROOT).startsWith(small))
                .limit(MOST)
                .toList();
        if (fitting.isEmpty()) {
            hide();
            return;
        }
        list.getItems().setAll(fitting);
        list.getSelectionModel().select(fitting.contains(chosen) ? fitting.indexOf(chosen) : 0);
        double em = area.getScene() == null ? USUAL_TEXT : size();
        double row = Math.ceil(ROW_HEIGHT * em);
        list.setFixedCellSize(row);
        list.setPrefHeight(Math.min(ROWS, fitting.size()) * row + 2);
        area.getCaretBounds().ifPresent(bounds -> floating.show(area, bounds, false));
    }

    private double size() {
        return area.lookup(".text") instanceof javafx.scene.text.Text text
                ? text.getFont().getSize()
                : USUAL_TEXT;
    }

    /** Asks the compiler for the exact types of the first suggestions. */
    private void askTypes() {
        if (!advice.isReady()) {
            return;
        }
        String text = area.getText();
        String before = text.substring(0, from);
        String after = text.substring(area.getCaretPosition());
        List<Choice> first = all.stream().limit(TYPED_FOR).toList();
        List<String> texts = new ArrayList<>();
        List<Integer> carets = new ArrayList<>();
        for (Choice each : first) {
            String call = each.suggestion.kind() == Suggestion.Kind.METHOD ? each.name() + "(" : each.name();
            texts.add(before + call + after);
            carets.add(before.length() + call.length());
        }
        advice.signatures(cell, texts, carets).thenAccept(told -> {
            for (int i = 0; i < told.size() && i < first.size(); i++) {
                Choice choice = first.get(i);
                choice.signatures = told.get(i).stream()
                        .flatMap(each -> Signature.of(each).stream())
                        .filter(each -> each.name().equals(choice.name()))
                        .toList();
                if (!choice.signatures.isEmpty()) {
                    choice.type = choice.signatures.get(0).type();
                }
            }
            list.refresh();
            tell(list.getSelectionModel().getSelectedItem());
        });
    }

    /** Shows what the chosen suggestion is. */
    private void tell(@Nullable Choice choice) {
        if (choice == null) {
            words.getChildren().clear();
            return;
        }
        words.getChildren()
                .setAll(
                        choice.signatures.isEmpty()
                                ? ApiWords.of(choice.name()).stream().limit(2).toList()
                                : ApiWords.of(choice.signatures.subList(0, 1)));
    }

    private void take() {
        Choice choice = list.getSelectionModel().getSelectedItem();
        hide();
        if (choice == null) {
            return;
        }
        String text = choice.suggestion.text();
        int caret = area.getCaretPosition();
        String after = area.getText(caret, Math.min(caret + 1, area.getLength()));
        boolean open = text.endsWith("(");
        boolean fills = open && !after.equals("(");
        String written = fills ? text + ")" : open ? text.substring(0, text.length() - 1) : text;
        area.replaceText(from, caret, written);
        area.moveTo(from + written.length() - (fills ? 1 : 0));
        if (fills) {
            called.run();
        }
    }

    /** One suggestion: what is written, and its type. */
    private static final class Row extends ListCell<Choice> {
        private final Label name = new Label();
        private final Label type = new Label();
        private final HBox row = new HBox(name, type);

        Row() {
            name.getStyleClass().addAll("code", "choice-name");
            type.getStyleClass().addAll("code", "choice-type");
            row.getStyleClass().add("choice");
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            name.setMinWidth(USE_PREF_SIZE);
        }

        @Override
        protected void updateItem(@Nullable Choice choice, boolean empty) {
            super.updateItem(choice, empty);
            if (empty || choice == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            String text = choice.suggestion.text();
            name.setText(text.endsWith("(") ? text + "…)" : text);
            type.setText(choice.type);
            setGraphic(row);
            setAccessibleText(choice.name() + (choice.type.isEmpty() ? "" : ", " + choice.type));
        }
    }

    void dispose() {
        hide();
    }
}
