package drylap.api.v1;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The document of the interface, as a program reads it that is told nothing else. */
final class Document {
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final JsonNode root;
    private final Map<String, Operation> operations = new LinkedHashMap<>();

    Document(JsonNode root) {
        this.root = root;
        root.path("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .properties()
                        .forEach(one -> operations.put(
                                one.getValue().path("operationId").asString(),
                                new Operation(
                                        one.getKey().toUpperCase(java.util.Locale.ROOT),
                                        path.getKey(),
                                        one.getValue()))));
    }

    record Operation(String method, String path, JsonNode node) {}

    record Parameter(String name, String in, boolean required) {}

    TreeSet<String> ids() {
        return new TreeSet<>(operations.keySet());
    }

    List<Operation> all() {
        return List.copyOf(operations.values());
    }

    Operation operation(String id) {
        var found = operations.get(id);
        if (found == null) throw new AssertionError("the document has no operation " + id);
        return found;
    }

    List<Parameter> parameters(Operation operation) {
        List<Parameter> all = new ArrayList<>();
        for (JsonNode one : operation.node().path("parameters")) {
            var parameter = resolved(one);
            all.add(new Parameter(
                    parameter.path("name").asString(),
                    parameter.path("in").asString(),
                    parameter.path("required").asBoolean(false)));
        }
        return all;
    }

    /** What the document says of an answer with this status. */
    JsonNode answer(Operation operation, int status) {
        var answers = operation.node().path("responses");
        return resolved(answers.path(answers.has(String.valueOf(status)) ? String.valueOf(status) : "default"));
    }

    JsonNode resolved(JsonNode node) {
        String reference = node.path("$ref").asString("");
        return reference.isEmpty() ? node : resolved(root.at(reference.substring(1)));
    }

    /** What is wrong with a value by a schema of the document; nothing where it is as the document says. */
    List<String> wrong(JsonNode schema, JsonNode value) {
        var whole = (ObjectNode) schema.deepCopy();
        whole.set("$defs", root.path("components").path("schemas"));
        Schema judge =
                SCHEMAS.getSchema(Program.JSON.readTree(whole.toString().replace("#/components/schemas/", "#/$defs/")));
        return judge
                .validate(value, run -> run.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(String::valueOf)
                .toList();
    }
}
