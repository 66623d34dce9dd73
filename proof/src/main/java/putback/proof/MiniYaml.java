package putback.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the few shapes that the data files use: {@code key: value} lines, and maps and lists in one line. */
final class MiniYaml {
    private final String text;
    private int at;

    private MiniYaml(String text) {
        this.text = text;
    }

    /** The value written behind a key that starts a line, indented or not. */
    static Object value(String file, String key) {
        for (String line : file.split("\n", -1)) {
            String plain = line.strip();
            if (plain.startsWith(key + ":")) {
                return new MiniYaml(plain.substring(key.length() + 1)).read();
            }
        }
        throw new IllegalStateException("the data file has no " + key);
    }

    /** The lines indented under a key, each {@code number: {..}}. */
    static Map<Integer, Map<?, ?>> numbered(String file, String key) {
        Map<Integer, Map<?, ?>> entries = new LinkedHashMap<>();
        boolean inside = false;
        for (String line : file.split("\n", -1)) {
            if (inside && line.matches(" +\\d+:.*")) {
                int colon = line.indexOf(':');
                Object value = new MiniYaml(line.substring(colon + 1)).read();
                entries.put(Integer.parseInt(line.substring(0, colon).strip()), (Map<?, ?>) value);
            } else {
                inside = line.startsWith(key + ":");
            }
        }
        return entries;
    }

    /** The lines indented under a key, each {@code - {..}}. */
    static List<Map<?, ?>> listed(String file, String key) {
        List<Map<?, ?>> entries = new ArrayList<>();
        boolean inside = false;
        for (String line : file.split("\n", -1)) {
            String plain = line.strip();
            if (inside && plain.startsWith("- {")) {
                entries.add((Map<?, ?>) new MiniYaml(plain.substring(1)).read());
            } else {
                inside = line.startsWith(key + ":");
            }
        }
        return entries;
    }

    private char peek() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at < text.length() ? text.charAt(at) : '#';
    }

    private Object read() {
        return switch (peek()) {
            case '{' -> map();
            case '[' -> list();
            default -> word();
        };
    }

    private Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        at++;
        while (peek() != '}') {
            String key = word();
            at++;
            map.put(key, read());
            skipComma();
        }
        at++;
        return map;
    }

    private List<Object> list() {
        List<Object> list = new ArrayList<>();
        at++;
        while (peek() != ']') {
            list.add(read());
            skipComma();
        }
        at++;
        return list;
    }

    private void skipComma() {
        if (peek() == ',') {
            at++;
        }
    }

    private String word() {
        peek();
        int from = at;
        while (at < text.length() && ",:{}[]#".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(from, at).strip();
    }
}
