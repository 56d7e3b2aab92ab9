package leverwright.face.desk.sheet;

import leverwright.run.result.MapResult;
import org.jspecify.annotations.Nullable;

/** A map with what can be done with it. */
final class MapBody extends PlotBody<MapResult> {

    private final MapPane map;

    MapBody(ResultHost host) {
        this(host, new MapPane(host.model()));
    }

    private MapBody(ResultHost host, MapPane map) {
        super(host, MapResult.class, map, "Whole map");
        this.map = map;
    }

    @Override
    String dataTitle(MapResult now) {
        return now.map().title();
    }

    @Override
    void draw(MapResult now, @Nullable MapResult before) {
        map.show(now, before == null ? null : before.map());
    }
}
