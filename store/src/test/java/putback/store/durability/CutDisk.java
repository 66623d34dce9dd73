package putback.store.durability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import putback.store.durability.DiskRecord.Operation;

/**
 * A disk as it may look after a power cut. What was synced is there. Of each later write, sector by sector, chance says whether it is; so
 * of each truncation. A new name is there for sure once its folder was synced, an old one gone for sure; before that chance says.
 */
final class CutDisk {
    private static final int SECTOR = 512;

    private final Map<String, FileContent> synced = new TreeMap<>();
    private final Map<String, List<Operation>> pending = new HashMap<>();
    private final Set<String> unsureNames = new HashSet<>();
    private final Map<String, FileContent> unlinked = new HashMap<>();

    /** Starts with a folder as it lies there, all of it synced. */
    CutDisk(Path before) throws IOException {
        try (var files = Files.list(before)) {
            for (Path file : files.toList()) {
                synced.put(file.getFileName().toString(), new FileContent(Files.readAllBytes(file)));
            }
        }
    }

    void run(List<Operation> operations) {
        operations.forEach(this::run);
    }

    private void run(Operation one) {
        if (one.what() == 's' && one.name().isEmpty()) {
            unsureNames.clear();
            unlinked.clear();
        } else if (one.what() == 's') {
            settle(one.name());
        } else if (one.what() == 'u') {
            settle(one.name());
            FileContent old = synced.remove(one.name());
            if (old != null && !unsureNames.remove(one.name())) {
                unlinked.put(one.name(), old);
            }
        } else {
            if (!synced.containsKey(one.name())) {
                synced.put(one.name(), new FileContent(new byte[0]));
                unsureNames.add(one.name());
            }
            pending.computeIfAbsent(one.name(), name -> new ArrayList<>()).add(one);
        }
    }

    private void settle(String name) {
        FileContent file = synced.get(name);
        List<Operation> all = pending.remove(name);
        if (file != null && all != null) {
            all.forEach(one -> apply(file, one, 0, one.bytes().length));
        }
    }

    private static void apply(FileContent file, Operation one, int from, int to) {
        if (one.what() == 't') {
            file.truncate((int) one.length());
        } else {
            file.write((int) one.at() + from, one.bytes(), from, to);
        }
    }

    /** Writes the disk as it is found when the power is back. */
    void cut(Path into, Random random) throws IOException {
        int likely = List.of(0, 50, 90, 100).get(random.nextInt(4));
        for (Map.Entry<String, FileContent> file : synced.entrySet()) {
            String name = file.getKey();
            boolean there = !unsureNames.contains(name) || chance(random, likely);
            FileContent content = file.getValue().copy();
            for (Operation one : pending.getOrDefault(name, List.of())) {
                perhaps(content, one, random, likely);
            }
            boolean rebuilt = name.endsWith("-shm") || name.equals("acknowledged");
            if (there && !rebuilt) {
                Files.write(into.resolve(name), content.bytes());
            }
        }
        for (Map.Entry<String, FileContent> old : unlinked.entrySet()) {
            if (!synced.containsKey(old.getKey()) && chance(random, 50)) {
                Files.write(into.resolve(old.getKey()), old.getValue().bytes());
            }
        }
    }

    private static boolean chance(Random random, int percent) {
        return random.nextInt(100) < percent;
    }

    private static void perhaps(FileContent file, Operation one, Random random, int likely) {
        if (one.what() == 't' && chance(random, likely)) {
            apply(file, one, 0, 0);
        }
        int from = 0;
        while (from < one.bytes().length) {
            int inSector = (int) ((one.at() + from) % SECTOR);
            int to = Math.min(one.bytes().length, from + SECTOR - inSector);
            if (chance(random, likely)) {
                apply(file, one, from, to);
            }
            from = to;
        }
    }
}
