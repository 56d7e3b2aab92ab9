package leverwright.face.desk.dials;

import javafx.beans.InvalidationListener;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.face.desk.style.Hint;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.DialDeclared;
import org.jspecify.annotations.Nullable;

/** One dial: its name, what it is set to as text that can be typed, a slider over its range, and the way back. */
final class DialControl extends VBox {

    private static final int STEPS_OF_PAGE = 10;
    private static final double THUMB = 11;

    private final DeskModel model;
    private final DialView dial;
    private final TextField typed = new TextField();
    private final Slider slider = new Slider();
    private final Button reset = new Button("Reset");
    private final Label error = new Label();
    private final Label from = new Label();
    private final Label to = new Label();
    private final Label middle = new Label();
    private final Region ghost = new Region();
    private final Region ghostBand = new Region();
    private final Pane ghosts = new Pane(ghostBand, ghost);
    private final DialBand band;
    private final InvalidationListener followSetting = changed -> showSetting();
    private final InvalidationListener followRange = changed -> showRange();
    private final InvalidationListener followError = changed -> showError();
    private final InvalidationListener followHeld = changed -> showHeld();
    private final ChangeListener<Number> turned = (property, before, now) -> turn(now.doubleValue());
    private boolean following;
    private double wheel;

    DialControl(DeskModel model, DialView dial) {
        this.model = model;
        this.dial = dial;
        this.band = new DialBand(model, dial);
        getStyleClass().add("dial");
        Label name = new Label(dial.name());
        name.getStyleClass().add("dial-name");
        name.setMaxWidth(Double.MAX_VALUE);
        name.setMinWidth(40);
        name.setWrapText(true);
        name.setLabelFor(typed);
        HBox.setHgrow(name, Priority.ALWAYS);
        typed.getStyleClass().add("dial-value");
        typed.setPrefColumnCount(8);
        typed.setOnAction(event -> take());
        typed.setOnKeyPressed(this::typedKey);
        typed.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take();
            }
        });
        reset.getStyleClass().addAll("plain", "small", "dial-reset");
        reset.setMinWidth(USE_PREF_SIZE);
        reset.setAccessibleText("Reset " + dial.name());
        reset.setOnAction(event -> model.resetDial(dial.name()));
        reset.visibleProperty().bind(dial.byHand());
        HBox line = new HBox(name, reset, typed);
        line.getStyleClass().add("dial-line");
        slider.valueProperty().addListener(turned);
        slider.addEventFilter(KeyEvent.KEY_PRESSED, this::sliderKey);
        addEventFilter(ScrollEvent.SCROLL, this::turnByWheel);
        ghost.getStyleClass().add("dial-before");
        ghost.setManaged(false);
        ghostBand.getStyleClass().add("dial-band-before");
        ghostBand.setManaged(false);
        ghosts.setMouseTransparent(true);
        ghosts.widthProperty().addListener(followHeld);
        StackPane track = new StackPane(ghosts, slider, band);
        track.getStyleClass().add("dial-track");
        Region one = new Region();
        Region two = new Region();
        HBox.setHgrow(one, Priority.ALWAYS);
        HBox.setHgrow(two, Priority.ALWAYS);
        HBox ends = new HBox(from, one, middle, two, to);
        ends.getStyleClass().add("dial-ends");
        error.getStyleClass().add("dial-error");
        error.setWrapText(true);
        error.setMinHeight(USE_PREF_SIZE);
        error.managedProperty().bind(error.visibleProperty());
        getChildren().addAll(line, track, ends, error);
        dial.setting().addListener(followSetting);
        dial.value().addListener(followSetting);
        dial.declared().addListener(followRange);
        dial.error().addListener(followError);
        model.held().addListener(followHeld);
        showRange();
        showSetting();
        showError();
        showHeld();
    }

    private void showRange() {
        DialDeclared declared = dial.declared().get();
        Unit unit = declared.setting().unit();
        following = true;
        slider.setMin(declared.from());
        slider.setMax(declared.to());
        slider.setBlockIncrement(declared.step());
        following = false;
        set(from, unit.format(declared.from()));
        set(to, unit.format(declared.to()));
        String step = "step " + unit.format(declared.step());
        Hint.on(slider, step + "; wheel and arrow keys turn it, Shift with arrow keys changes its error");
        showSetting();
    }

    private static void set(Label label, String words) {
        if (!words.equals(label.getText())) {
            label.setText(words);
        }
    }

    private void showSetting() {
        if (!typed.isFocused() || typed.getText().equals(dial.setting().get())) {
            typed.setText(dial.setting().get());
        } else if (dial.error().get().isEmpty() && !typing) {
            typed.setText(dial.setting().get());
        }
        following = true;
        if (!slider.isValueChanging()) {
            slider.setValue(dial.value().get());
        }
        following = false;
        String words = dial.name() + ", " + dial.setting().get();
        typed.setAccessibleText(words + ", typed");
        slider.setAccessibleText(words);
    }

    private boolean typing;

    private void take() {
        typing = false;
        if (!typed.getText().equals(dial.setting().get())) {
            model.typeDial(dial.name(), typed.getText());
        } else if (!dial.error().get().isEmpty()) {
            model.typeDial(dial.name(), typed.getText());
        }
    }

    private void typedKey(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            typing = false;
            typed.setText(dial.setting().get());
            model.typeDial(dial.name(), dial.setting().get());
            event.consume();
        } else if (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
            typing = false;
            stepBy(event.getCode() == KeyCode.UP ? 1 : -1);
            event.consume();
        } else if (event.getCode() != KeyCode.ENTER) {
            typing = true;
        }
    }

    private void sliderKey(KeyEvent event) {
        int steps = switch (event.getCode()) {
            case RIGHT, UP -> 1;
            case LEFT, DOWN -> -1;
            case PAGE_UP -> STEPS_OF_PAGE;
            case PAGE_DOWN -> -STEPS_OF_PAGE;
            default -> 0;
        };
        if (steps != 0 && event.isShiftDown()) {
            double step = dial.declared().get().step();
            model.widen(dial.name(), Math.max(0, dial.halfWidth().get() + steps * step));
            event.consume();
        } else if (steps != 0 && !event.isShortcutDown() && !event.isAltDown()) {
            stepBy(steps);
            event.consume();
        }
    }

    private void stepBy(int steps) {
        model.turn(
                dial.name(), dial.value().get() + steps * dial.declared().get().step());
    }

    /** The wheel turns the dial over which the mouse stands, if the mouse is on its track or value. */
    private void turnByWheel(ScrollEvent event) {
        Node at = event.getPickResult().getIntersectedNode();
        boolean over = isWithin(at, slider) || isWithin(at, typed);
        if (!over || event.getDeltaY() == 0) {
            return;
        }
        wheel += event.getDeltaY() / (event.getMultiplierY() > 0 ? event.getMultiplierY() : 40);
        int steps = (int) wheel;
        if (steps != 0) {
            wheel -= steps;
            stepBy(steps);
        }
        event.consume();
    }

    private static boolean isWithin(Node node, Node part) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == part) {
                return true;
            }
        }
        return false;
    }

    private void turn(double si) {
        if (!following && si != dial.value().get()) {
            model.turn(dial.name(), si);
        }
    }

    private void showError() {
        String words = dial.error().get();
        error.setText(words);
        error.setVisible(!words.isEmpty());
        typed.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("wrong"), !words.isEmpty());
        typed.setAccessibleHelp(words);
    }

    /** Shows where the dial stood, and with which band, when the setting was held. */
    private void showHeld() {
        Measure<?> before = model.held()
                .get()
                .map(held -> heldValue(held.settings().get(dial.name())))
                .orElse(null);
        boolean shown = before != null && ghosts.getWidth() > 0;
        ghost.setVisible(shown);
        ghostBand.setVisible(shown && before != null && before.error() > 0);
        if (!shown || before == null) {
            set(middle, "");
            return;
        }
        DialDeclared declared = dial.declared().get();
        Unit unit = declared.setting().unit();
        String half = before.error() > 0 ? " ± " + unit.format(before.error()) : "";
        set(middle, "before " + unit.format(before.si()) + half);
        ghost.resizeRelocate(across(before.si()) - 4, 0, 8, ghosts.getHeight());
        double from = across(before.si() - before.error());
        double to = across(before.si() + before.error());
        ghostBand.resizeRelocate(from, ghosts.getHeight() / 2 - 5, Math.max(1, to - from), 10);
    }

    private double across(double si) {
        DialDeclared declared = dial.declared().get();
        double share = (si - declared.from()) / (declared.to() - declared.from());
        return THUMB / 2 + Math.max(0, Math.min(1, share)) * (ghosts.getWidth() - THUMB);
    }

    private @Nullable Measure<?> heldValue(@Nullable String setting) {
        DialDeclared declared = dial.declared().get();
        Unit unit = declared.standard().unit();
        if (setting == null) {
            double half = (declared.standard().high() - declared.standard().low()) / 2;
            return unit.dimension().of(declared.standard().value(), half);
        }
        try {
            return MeasureText.parse(setting, unit.dimension());
        } catch (IllegalArgumentException unreadable) {
            return null;
        }
    }

    /** Returns the value in words, for the title of the control. */
    String words() {
        return ValueText.setting(dial.declared().get().setting());
    }

    void dispose() {
        band.dispose();
        dial.setting().removeListener(followSetting);
        dial.value().removeListener(followSetting);
        dial.declared().removeListener(followRange);
        dial.error().removeListener(followError);
        model.held().removeListener(followHeld);
        reset.visibleProperty().unbind();
    }
}
