package leverwright.mechanics.exercise;

import java.util.function.ObjDoubleConsumer;

/**
 * The arms of an exercise with a layout of its own, its load, and what was added to that: where something was, balance counts the
 * moments of all forces instead of masses alone.
 */
final class Beside implements Stance.Upper {
    private final Stance.Upper own;
    private final Work work;
    private final ObjDoubleConsumer<Layout> load;
    private final boolean alone;

    /**
     * Begins.
     *
     * @param own places the arms and returns the load's x
     * @param load adds the exercise's own load, whose x is told
     */
    Beside(Layout layout, Settings settings, Stance.Upper own, ObjDoubleConsumer<Layout> load) {
        this.own = own;
        this.work = new Work(layout, settings, false);
        this.load = load;
        this.alone = settings.added().isEmpty();
    }

    @Override
    public double place(Layout layout) {
        double x = own.place(layout);
        if (!alone) {
            layout.clearLoads();
            load.accept(layout, x);
            add(work);
        }
        return x;
    }

    @Override
    public double imbalance(Layout layout, double at, double mass, double loadX) {
        return alone ? own.imbalance(layout, at, mass, loadX) : -work.momentAbout(at, 0, -1) / Layout.GRAVITY;
    }

    /** Adds the exercise's own load where it stands alone, or what is shown of the others, when everything is placed. */
    void finish(Layout layout, double x) {
        if (alone) {
            load.accept(layout, x);
        } else {
            show(work);
        }
    }

    /** Adds and shows all loads beside an exercise's own, where these do not change how it stands. */
    static void addTo(Layout layout, Settings settings) {
        Work work = new Work(layout, settings, false);
        add(work);
        show(work);
    }

    private static void add(Work work) {
        work.settings().added().forEach(each -> each.add(work));
    }

    private static void show(Work work) {
        work.layout().showing(() -> work.settings().added().forEach(each -> each.show(work)));
    }
}
