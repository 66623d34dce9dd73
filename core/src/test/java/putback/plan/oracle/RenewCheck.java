package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import putback.plan.selection.Target;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.sheet.WithNew;

/**
 * New parts: each part asked for or spoiled is renewed once while it is off, and its joints are tightened as it asks.
 *
 * <p>Reading: a part that comes with a new unit is a new one too.
 */
final class RenewCheck extends Check {
    private final BitSet toRenew = new BitSet();
    private final List<String> newIds = new ArrayList<>();

    RenewCheck(Scene scene) {
        super(scene);
        for (Target target : scene.plan.wanted().targets()) {
            newIds.add(target.id());
            if (target instanceof Target.OfPart ofPart) {
                toRenew.set(ofPart.part().index());
            } else if (target instanceof Target.OfUnit ofUnit) {
                ofUnit.unit().parts().forEach(toRenew::set);
            }
        }
        scene.plan.selection().spoiled().forEach(toRenew::set);
        toRenew.stream().forEach(p -> newIds.add(partId(p)));
    }

    @Override
    void before(Step step) {
        if (step.act() == Act.RENEW) {
            for (int p : Scene.group(step)) {
                complain(!toRenew.get(p), step, partId(p) + " need not be renewed");
                complain(scene.renewed.get(p), step, partId(p) + " is renewed already");
                complain(!scene.bonds().off(p), step, partId(p) + " is still on the car");
            }
        } else if (step.act() == Act.OFFER_UP) {
            for (int p : Scene.group(step)) {
                complain(toRenew.get(p) && !scene.renewed.get(p), step, "the old " + partId(p) + " goes back");
            }
        } else if (step.act() == Act.TIGHTEN) {
            tighten(step);
        }
    }

    private void tighten(Step step) {
        Joint joint = Objects.requireNonNull(step.joint());
        List<Fastener> expected = new ArrayList<>();
        for (WithNew withNew : joint.entry().withNew()) {
            if (isNew(withNew.part(), joint.side())) {
                expected.add(withNew.fastener());
            }
        }
        if (expected.isEmpty()) {
            expected.add(joint.fastener());
        }
        complain(step.fastener() == null || !expected.contains(step.fastener()), step, "it is another fastener now");
    }

    private boolean isNew(String written, Side side) {
        return newIds.contains(written)
                || newIds.contains(side.prefix() + written)
                || (side == Side.NONE && newIds.stream().anyMatch(id -> id.endsWith("." + written)));
    }

    @Override
    void end() {
        toRenew.andNot(scene.renewed);
        toRenew.stream().forEach(p -> complain(true, partId(p) + " is never renewed"));
    }
}
