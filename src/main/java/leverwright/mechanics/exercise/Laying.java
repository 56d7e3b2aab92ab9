package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import leverwright.mechanics.body.Segment;
import org.jspecify.annotations.Nullable;

/** Lays a movement out for a body: leans, places, limbs that reach, loads, contacts. */
final class Laying implements Stance.Upper {
    private final Plan plan;
    private final Settings settings;
    private final Layout layout;
    private final Work work;
    private final boolean swapped;

    Laying(Plan plan, Settings settings, Skeleton body, boolean swapped) {
        this.plan = plan;
        this.settings = settings;
        this.swapped = swapped;
        this.layout = new Layout(body, plan.plane, plan.parting);
        this.work = new Work(layout, settings, swapped);
    }

    Layout lay() {
        prepare();
        if (plan.standing) {
            work.searching(true);
            new Stance(layout, settings, 0, this, swapped).stand(plan.preferred);
            work.searching(false);
            if (!plan.reaches.isEmpty()) {
                place(layout);
            }
        } else {
            Search search = plan.search;
            if (search == null) {
                pose();
            } else {
                search.find(work, this::pose);
                if (plan.onFeet) {
                    layout.found(new Layout.Found(Segment.SHANK, true));
                } else {
                    layout.confirm(hand -> search.confirm(hand, work));
                }
            }
        }
        finish();
        return layout;
    }

    private void prepare() {
        if (swapped) {
            layout.swap();
        }
        if (plan.palmsBack) {
            layout.palmsBack();
        }
        double stature = layout.body().lifter().stature().si();
        if (plan.hips != null && plan.shoulders != null) {
            layout.apart(work.si(plan.hips) * stature / 2, work.si(plan.shoulders) * stature / 2, swapped ? -1 : 1);
        }
        if (plan.gravity == Plan.Gravity.NONE) {
            layout.noGravity();
        } else if (plan.gravity == Plan.Gravity.TILTED && plan.tilt != null) {
            layout.gravityTilt(work.si(plan.tilt));
        }
        if (plan.standing || plan.onFeet) {
            layout.standsOn(mask(plan.held));
        } else {
            layout.heldAt(mask(plan.held));
            layout.trunkHeldBy(plan.trunkHold);
        }
    }

    private int mask(int ruled) {
        int mask = 0;
        for (Member member : Member.ALL) {
            if ((ruled & member.bit()) != 0) {
                mask |= work.on(member).bit();
            }
        }
        return mask;
    }

    private void anchor() {
        boolean limb = plan.anchor.onLeg() || plan.anchor.onArm();
        if (limb && swapped && plan.parting.splitsAny()) {
            layout.anchorOtherAt(plan.anchor, plan.anchorX.of(work), plan.anchorY.of(work));
        } else {
            layout.anchorAt(plan.anchor, plan.anchorX.of(work), plan.anchorY.of(work));
        }
        layout.anchorWords(plan.anchorWords);
        layout.pressureAt(plan.pressure.of(work));
    }

    /** Sets all leans by their rules, places everything, and adds the loads. */
    private void pose() {
        for (Map.Entry<Member, LeanRule> entry : plan.leans.entrySet()) {
            layout.lean(work.on(entry.getKey()), entry.getValue().of(work));
        }
        anchor();
        layout.placeLegsAndTrunk();
        layout.placeArms();
        reachAndLoad();
    }

    private void reachAndLoad() {
        for (Reach reach : plan.reaches) {
            reach.bend(work);
            if (reach.upper().isLeg()) {
                layout.hangLeg(work.isOther(reach.upper()));
            } else {
                layout.placeArms();
            }
        }
        layout.clearLoads();
        for (LoadRule load : plan.loads) {
            load.add(work);
        }
    }

    @Override
    public double place(Layout placing) {
        for (Map.Entry<Member, LeanRule> entry : plan.leans.entrySet()) {
            layout.lean(work.on(entry.getKey()), entry.getValue().of(work));
        }
        if (plan.parting.isSplit(Segment.THIGH)) {
            layout.hangLeg(!swapped);
        }
        layout.placeArms();
        reachAndLoad();
        return 0;
    }

    @Override
    public double imbalance(Layout placing, double at, double load, double loadX) {
        return -work.momentAbout(at, 0, -1) / Layout.GRAVITY;
    }

    private void finish() {
        plan.checks.forEach(check -> check.accept(work));
        layout.originsBy(this::origin);
        plan.confirmations.forEach(lines -> layout.confirm(hand -> lines.apply(hand, work)));
        for (Reach reach : plan.reaches) {
            layout.confirm(hand -> reach.confirm(hand, work));
        }
        layout.showing(() -> {
            plan.scenery.forEach(shown -> shown.accept(work));
            plan.loads.forEach(load -> load.show(work));
        });
    }

    private @Nullable String origin(Member member) {
        for (Map.Entry<Member, LeanRule> entry : plan.leans.entrySet()) {
            if (work.on(entry.getKey()) == member) {
                return origin(entry.getValue());
            }
        }
        return null;
    }

    private String origin(LeanRule rule) {
        Knob<?> knob = rule.knob();
        if (knob == null || rule.base() != null) {
            return rule.words();
        }
        return settings.given(knob) ? "set on the exercise" : "the exercise's default";
    }

    /** Returns the remarks on contacts that would pull or slide. */
    static List<String> remarks(Plan plan, Settings settings, Layout laid) {
        List<String> remarks = new ArrayList<>();
        Work read = new Work(laid, settings, laid.isSwapped());
        for (int k = 0; k < plan.loads.size(); k++) {
            if (plan.loads.get(k) instanceof Contact contact) {
                contact.remark(read, laid.loads().get(k)).ifPresent(remarks::add);
            }
        }
        for (Function<Work, Optional<String>> remark : plan.remarks) {
            remark.apply(read).ifPresent(remarks::add);
        }
        return remarks;
    }
}
