package drylap.api;

import drylap.assembly.Approach;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.Variant;
import drylap.kernel.Coded;
import java.util.Optional;

/** A variant as part of an address: {@code B1_drainage_tuck}. */
final class VariantName {
    private VariantName() {}

    static String of(Variant variant) {
        return "%s_%s_%s"
                .formatted(
                        variant.method().code(),
                        variant.approach().code(),
                        variant.secondLayer().code());
    }

    static Optional<Variant> parse(String name) {
        String[] parts = name.split("_", -1);
        if (parts.length != 3) return Optional.empty();
        return Coded.parse(Method.class, parts[0])
                .flatMap(method -> Coded.parse(Approach.class, parts[1])
                        .flatMap(approach -> Coded.parse(SecondLayer.class, parts[2])
                                .map(second -> new Variant(method, approach, second))));
    }
}
