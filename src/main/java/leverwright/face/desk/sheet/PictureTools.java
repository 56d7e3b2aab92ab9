package leverwright.face.desk.sheet;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import leverwright.face.draw.Palette;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** What is done with charts, maps and figures alike. */
final class PictureTools {

    private PictureTools() {}

    /** Returns entries that copy and save what a supplier gives when they are chosen. */
    static List<MenuItem> items(
            ResultHost host, Node at, Supplier<@Nullable Result> shown, ResultBody.Telling telling) {
        return List.of(
                item("Copy the picture", shown, now -> host.copyPicture(now, telling::tell)),
                item(
                        "Save as SVG…",
                        shown,
                        now -> host.save(at, now, "svg", "Drawing (SVG)", () -> ResultFiles.svg(now), telling::tell)),
                item("Save as PNG…", shown, now -> {
                    Palette palette = host.palette();
                    host.save(at, now, "png", "Picture (PNG)", () -> ResultFiles.png(now, palette), telling::tell);
                }));
    }

    /** Returns entries that save and copy the numbers behind what a supplier gives when they are chosen. */
    static List<MenuItem> numbers(
            ResultHost host, Node at, Supplier<@Nullable Result> shown, ResultBody.Telling telling) {
        return List.of(
                item(
                        "Save as CSV…",
                        shown,
                        now -> host.save(at, now, "csv", "Numbers (CSV)", () -> ResultFiles.csv(now), telling::tell)),
                item("Copy the numbers", shown, now -> {
                    host.copy(ResultFiles.values(now, '\t'));
                    telling.tell("Copied, for a spreadsheet.");
                }));
    }

    private static MenuItem item(String words, Supplier<@Nullable Result> shown, Consumer<Result> deed) {
        return ResultBody.item(words, () -> {
            Result now = shown.get();
            if (now != null) {
                deed.accept(now);
            }
        });
    }
}
