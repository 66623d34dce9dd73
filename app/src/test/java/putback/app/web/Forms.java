package putback.app.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The forms of a page that send something, filled in as somebody does who means harm: the same text in every text field. */
record Forms(String action, Map<String, String> fields) {
    private static final Pattern FORM = Pattern.compile("<form([^>]*)>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern FIELD = Pattern.compile(
            "<(input|textarea|button)\\b([^>]*)>|<select\\b([^>]*)>\\s*<option([^>]*)>([^<]*)", Pattern.DOTALL);
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)=\"([^\"]*)\"");

    static List<Forms> of(String page, String text) {
        List<Forms> forms = new ArrayList<>();
        Matcher form = FORM.matcher(page);
        while (form.find()) {
            Map<String, String> head = attributes(form.group(1));
            if ("post".equals(head.get("method")) && !"multipart/form-data".equals(head.get("enctype"))) {
                forms.add(new Forms(head.getOrDefault("action", ""), fields(form.group(2), text)));
            }
        }
        return forms;
    }

    private static Map<String, String> fields(String form, String text) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher field = FIELD.matcher(form);
        while (field.find()) {
            boolean select = field.group(1) == null;
            Map<String, String> has = attributes(select ? field.group(3) : field.group(2));
            String name = has.getOrDefault("name", "");
            if (select) {
                fields.put(name, attributes(field.group(4)).getOrDefault("value", field.group(5)));
            } else if (!name.isEmpty()) {
                fields.putIfAbsent(name, value(field.group(1), has, text));
            }
        }
        return fields;
    }

    private static String value(String tag, Map<String, String> has, String text) {
        String type = has.getOrDefault("type", "text");
        if (tag.equals("button") || type.equals("hidden") || type.equals("radio") || type.equals("checkbox")) {
            return has.getOrDefault("value", "on");
        }
        if (type.equals("date")) {
            return "2026-12-01";
        }
        if (type.equals("datetime-local")) {
            return "2026-12-01T10:00";
        }
        if (has.getOrDefault("name", "").equals("built")) {
            return "2014";
        }
        String keys = has.getOrDefault("inputmode", "");
        return keys.equals("decimal") || keys.equals("numeric") ? "100" : text;
    }

    private static Map<String, String> attributes(String written) {
        Map<String, String> attributes = new HashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(written);
        while (attribute.find()) {
            attributes.put(attribute.group(1), attribute.group(2));
        }
        return attributes;
    }
}
