package putback.tightening.toolbox;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.tightening.Adapter;

/**
 * What goes between a torque wrench and the fastener.
 *
 * @param sockets those of the size, on whatever drive; empty for a crowfoot adapter or a bit
 * @param crowfoot in their place; null for none
 */
record Reaching(List<Owned> sockets, @Nullable Owned crowfoot) {
    /** Null when the toolbox has nothing for it. A tool without a size (a bit) is taken to go on a wrench. */
    static @Nullable Reaching of(Toolbox toolbox, String name) {
        Tool tool = Tool.named(name);
        if (tool == null) {
            return new Reaching(List.of(), null);
        }
        List<Owned> sockets = new ArrayList<>();
        for (Owned owned : toolbox.tools()) {
            boolean socket = owned.tool().form() == ToolForm.SOCKET
                    || owned.tool().form() == ToolForm.PASS_THROUGH
                    || owned.tool().form() == ToolForm.HEX_KEY && tool.form() == ToolForm.HEX_KEY;
            if (socket && tool.form() != ToolForm.FLARE_SPANNER && Substitutes.fits(owned.tool(), tool)) {
                sockets.add(owned);
            }
        }
        Owned crowfoot = toolbox.owned(ToolForm.CROWFOOT, tool.size());
        return sockets.isEmpty() && crowfoot == null ? null : new Reaching(List.copyOf(sockets), crowfoot);
    }

    /** What the hand has to know of it. */
    List<String> remarks(TorqueWrench wrench, Task task) {
        List<String> remarks = new ArrayList<>();
        if (crowfoot != null && (sockets.isEmpty() || task.key())) {
            remarks.add(square(wrench, task, crowfoot));
            return remarks;
        }
        Length drive = wrench.drive();
        if (!sockets.isEmpty() && drive != null && !hasDrive(drive)) {
            remarks.add(otherDrive(drive));
        }
        if (task.key()) {
            remarks.add("the wrench's square covers the key: hold with the key while the spanner runs it down; if the"
                    + " middle still turns under the wrench, it takes a crowfoot adapter");
        }
        return remarks;
    }

    private static String square(TorqueWrench wrench, Task task, Owned crowfoot) {
        String said = "with the " + crowfoot.tool().text() + " square to the wrench, so that the setting stays";
        Length reach = crowfoot.reach();
        Length length = wrench.length();
        if (reach == null || length == null) {
            return said + "; another angle changes it (putback setting)";
        }
        return Adapter.of(length, reach, new Angle(0)) instanceof Parsed.Value<Adapter> straight
                ? said + "; straight on it would be "
                        + straight.value().setting(task.torque()).text()
                : said;
    }

    private boolean hasDrive(Length drive) {
        for (Owned socket : sockets) {
            if (socket.drive() == null || socket.drive().equals(drive)) {
                return true;
            }
        }
        return false;
    }

    private String otherDrive(Length drive) {
        Length of = sockets.get(0).drive();
        return "the " + sockets.get(0).tool().text() + " has a drive of " + (of == null ? "" : of.acrossFlats())
                + ", the wrench " + drive.acrossFlats() + ": a drive adapter goes between, which changes nothing";
    }
}
