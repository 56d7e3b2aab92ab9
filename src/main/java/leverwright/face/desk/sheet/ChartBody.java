package leverwright.face.desk.sheet;

import leverwright.run.result.CurvesResult;
import org.jspecify.annotations.Nullable;

/** A chart with what can be done with it. */
final class ChartBody extends PlotBody<CurvesResult> {

    private final ChartPane chart;

    ChartBody(ResultHost host) {
        this(host, new ChartPane(host.model()));
    }

    private ChartBody(ResultHost host, ChartPane chart) {
        super(host, CurvesResult.class, chart, "Whole chart");
        this.chart = chart;
    }

    @Override
    String dataTitle(CurvesResult now) {
        return now.curves().title();
    }

    @Override
    void draw(CurvesResult now, @Nullable CurvesResult before) {
        chart.show(now, before == null ? null : before.curves());
    }
}
