package leverwright.face.desk.sheet;

import java.util.List;
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
                ResultBody.item("Copy the picture", () -> {
                    Result now = shown.get();
                    if (now != null) {
                        host.copyPicture(now, telling::tell);
                    }
                }),
                ResultBody.item("Save as SVG…", () -> {
                    Result now = shown.get();
                    if (now != null) {
                        host.save(at, now, "svg", "Drawing (SVG)", () -> ResultFiles.svg(now), telling::tell);
                    }
                }),
                ResultBody.item("Save as PNG…", () -> {
                    Result now = shown.get();
                    if (now != null) {
                        Palette palette = host.palette();
                        host.save(at, now, "png", "Picture (PNG)", () -> ResultFiles.png(now, palette), telling::tell);
                    }
                }));
    }

    /** Returns entries that save and copy the numbers behind what a supplier gives when they are chosen. */
    static List<MenuItem> numbers(
            ResultHost host, Node at, Supplier<@Nullable Result> shown, ResultBody.Telling telling) {
        return List.of(
                ResultBody.item("Save as CSV…", () -> {
                    Result now = shown.get();
                    if (now != null) {
                        host.save(at, now, "csv", "Numbers (CSV)", () -> ResultFiles.csv(now), telling::tell);
                    }
                }),
                ResultBody.item("Copy the numbers", () -> {
                    Result now = shown.get();
                    if (now != null) {
                        host.copy(ResultFiles.values(now, '\t'));
                        telling.tell("Copied, for a spreadsheet.");
                    }
                }));
    }
}
