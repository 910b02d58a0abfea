package drylap.cli;

import drylap.kernel.Coded;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a coded value as the files write it; a refusal says what is accepted. */
record CodeOf<E extends Enum<E> & Coded>(Class<E> type, String noun) implements ITypeConverter<E> {
    @Override
    public E convert(String code) {
        return Coded.parse(type, code)
                .orElseThrow(() -> new TypeConversionException(
                        "'%s' is no %s; accepted: %s".formatted(code, noun, Coded.codes(type))));
    }
}
