package putback.app.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** JSON read by somebody else's reader: maps, lists, strings, BigDecimal, Boolean and null. */
public final class JsonTree {
    private JsonTree() {}

    public static @Nullable Object read(String json) {
        JsonFactory strict = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
        try (JsonParser parser = strict.createParser(json)) {
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException("more than one value");
            }
            return value;
        } catch (IOException bad) {
            throw new UncheckedIOException(bad);
        }
    }

    private static @Nullable Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw new IllegalArgumentException("unexpected " + parser.currentToken());
        };
    }

    private static Map<String, @Nullable Object> object(JsonParser parser) throws IOException {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            object.put(key, value(parser));
        }
        return object;
    }

    private static List<@Nullable Object> array(JsonParser parser) throws IOException {
        List<@Nullable Object> array = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(parser));
        }
        return array;
    }
}
