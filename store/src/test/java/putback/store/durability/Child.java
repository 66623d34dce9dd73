package putback.store.durability;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** {@link Acknowledging} in a Java of its own, and what it said. */
final class Child {
    private final Process process;
    private final BufferedReader said;
    private final List<String> lines = new ArrayList<>();

    private Child(Process process) {
        this.process = process;
        said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static Child start(Map<String, String> environment, String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dslf4j.internal.verbosity=ERROR",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Acknowledging.class.getName()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(environment);
        return new Child(builder.start());
    }

    /** Reads lines until there are so many more, or the child has ended. */
    List<String> read(int more) throws IOException {
        for (int i = 0; i < more; i++) {
            String line = said.readLine();
            if (line == null) {
                break;
            }
            lines.add(line);
        }
        return lines;
    }

    /** kill -9, then all that it had said. A last line without its end was not said. */
    List<String> kill() throws IOException, InterruptedException {
        process.toHandle().destroyForcibly();
        StringBuilder rest = new StringBuilder();
        for (int c = said.read(); c >= 0; c = said.read()) {
            rest.append((char) c);
        }
        process.waitFor();
        int end = rest.lastIndexOf("\n");
        rest.substring(0, end + 1).lines().forEach(lines::add);
        return lines;
    }

    /** Waits for its end; it must end well. */
    List<String> end() throws IOException, InterruptedException {
        read(Integer.MAX_VALUE);
        int exit = process.waitFor();
        if (exit != 0) {
            throw new IOException("it ended with " + exit + ": " + lines);
        }
        return lines;
    }
}
