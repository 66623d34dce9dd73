package putback.store.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a program asked of a disk, in order.
 *
 * @param operations from the first to the last
 */
record DiskRecord(List<Operation> operations) {

    /**
     * One thing asked.
     *
     * @param what w for write, t for truncate, s for sync, u for unlink
     * @param name of the file, empty for the folder
     * @param at where a write starts
     * @param length of the write, or of the file when truncated
     */
    record Operation(char what, String name, long at, long length, byte[] bytes) {}

    static DiskRecord read(Path log) throws IOException {
        ByteBuffer left = ByteBuffer.wrap(Files.readAllBytes(log)).order(ByteOrder.LITTLE_ENDIAN);
        List<Operation> operations = new ArrayList<>();
        while (left.hasRemaining()) {
            char what = (char) left.get();
            byte[] name = new byte[left.getShort()];
            left.get(name);
            long at = left.getLong();
            long length = left.getLong();
            byte[] bytes = new byte[what == 'w' ? (int) length : 0];
            left.get(bytes);
            operations.add(new Operation(what, new String(name, StandardCharsets.UTF_8), at, length, bytes));
        }
        return new DiskRecord(operations);
    }

    /** What had been acknowledged before an operation. */
    List<String> acknowledged(int before) {
        StringBuilder said = new StringBuilder();
        for (Operation one : operations.subList(0, before)) {
            if (one.what() == 'w' && one.name().equals("acknowledged")) {
                said.append(new String(one.bytes(), StandardCharsets.UTF_8));
            }
        }
        return said.toString().lines().toList();
    }
}
