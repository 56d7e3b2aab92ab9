package leverwright.face.desk.sheet;

import java.util.function.Supplier;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.draw.ChartDrawing;
import leverwright.face.draw.FigureDrawing;
import leverwright.face.draw.FigureFrame;
import leverwright.face.draw.MapDrawing;
import leverwright.face.draw.Picture;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** A figure, a chart or a map to look at, outside the sheet: nothing of it can be dragged. A figure keeps its frame while it moves. */
public final class StillPane extends PicturePane<Picture> {
    private static final int LEAST = 260;
    private static final double TALLEST = 300;
    private static final int CHART = 190;
    private static final int MAP = 260;
    private @Nullable Result result;
    private @Nullable FigureFrame frame;

    /** Makes an empty pane in the looks of a desk. */
    public StillPane(DeskModel model) {
        super(model, picture -> picture, LEAST);
    }

    /** Shows a figure, a chart or a map in place of what was shown. */
    public void show(Result now) {
        if (now.equals(result)) {
            return;
        }
        result = now;
        if (now instanceof FigureResult figure) {
            FigureFrame own = FigureFrame.of(figure.sketch());
            FigureFrame kept = frame;
            frame = kept == null ? own : kept.with(own);
        }
        redraw();
    }

    @Override
    @Nullable
    Supplier<Picture> drawing(int width) {
        Result now = result;
        FigureFrame around = frame;
        if (now instanceof FigureResult figure && around != null) {
            return () ->
                    FigureDrawing.draw(figure, around, width, TALLEST, null).picture();
        }
        if (now instanceof MapResult map) {
            return () -> MapDrawing.of(map, width, MAP);
        }
        return now instanceof CurvesResult curves ? () -> ChartDrawing.of(curves, width, CHART) : null;
    }

    @Override
    double guess(int width) {
        return result instanceof CurvesResult ? CHART : result instanceof MapResult ? MAP : TALLEST;
    }

    @Override
    void shown(Picture drawing) {}

    /** Stops following the desk. */
    @Override
    public void dispose() {
        super.dispose();
    }
}
