package drylap.buildingmodel;

import drylap.speech.Saying;
import java.util.Arrays;
import java.util.stream.Stream;

/** What is said of a building model and its windows. It is written in English from these sentences, and may be read back to be said to others. */
public enum ModelSaid {
    ENTITY("entity #{0}"),
    LINE("line {0}"),
    LINE_AND_ENTITY("line {0}, entity #{1}"),
    PROJECTS("has {0} projects"),
    ONE_PROJECT("a model with one IfcProject"),
    NO_UNIT("assigns no unit of length"),
    MANY_UNITS("assigns more than one unit of length"),
    ONE_UNIT("one unit of length in the IfcUnitAssignment of the IfcProject"),
    ODD_UNIT("is no unit of length that can be worked out"),
    METRES("metres with a prefix of the SI, or a unit converted from them"),
    OTHER_NORTH("has another true north than the other contexts"),
    NO_NORTH("has a true north that is no direction"),
    ONE_NORTH("one true north of two numbers, not both 0"),
    NORTH("True north lies {0}° counter-clockwise from the model's +Y axis."),
    NORTH_NOT_SAID(
            "The model says no true north: by the standard it then lies along its +Y axis. Check it before you take the openings in."),
    TOO_MANY_READ("is one entity too many of those that are read"),
    AT_MOST("at most {0}"),
    TWICE("is there twice"),
    ONCE("each entity number once"),
    LENGTHS("{0}, lengths in {1}, which are {2} mm each."),
    MARKS("The mark is a window's tag, or else its name. Sizes are overall sizes of frames."),
    SILLS(
            "A sill is measured from the floor of the storey to the place of the window, which is its lower edge by the standard's custom."),
    OUTSIDES(
            "A wall's outside is the side on which no other wall or window of its storey stands; where both sides or neither have some, you are asked."),
    FACING("which way it faces: {0}"),
    NO_WIDTH("its overall width"),
    NO_HEIGHT("its overall height"),
    NO_PLACE("the window has no place in the model"),
    IN_NO_WALL("the opening that it fills is in no wall"),
    NO_OPENING("it fills no opening of a wall"),
    SILL_OF_WINDOW("its sill: the window has no place in the model"),
    SILL_OF_STOREY("its sill: its storey has no place in the model"),
    STOREY("storey #{0}"),
    BUILDING("building #{0}"),
    WALL("wall #{0}"),
    INNER("the model says that its wall is an inner one"),
    WALL_NOWHERE("its wall has no place in the model"),
    NOT_UPRIGHT("its wall does not stand upright"),
    TURNED("the window is turned otherwise than its wall"),
    BOTH_SIDES("walls of its storey stand on both sides of its wall"),
    NO_OTHER("no other wall of its storey tells the inside from the outside"),
    NO_WINDOWS("has no windows"),
    WITH_WINDOWS("a model with IfcWindow entities"),
    SCHEMA("is written by the schema {0}"),
    SCHEMAS("a model in IFC2X3 or IFC4"),

    BEGINS_OTHERWISE("does not begin with {0}"),
    BEGINS("a file that begins with ISO-10303-21; and has a header and a data section"),
    NO_SECTION("has no section {0}"),
    ENDS_IN_SECTION("ends within section {0}"),
    WHOLE_FILE("a whole file"),
    NEITHER("has neither an entity nor ENDSEC"),
    TOO_MANY("is one entity too many"),
    MOST_ENTITIES("at most {0} entities"),
    TOO_DEEP("has lists within lists too deep"),
    MOST_OF_THEM("at most {0} of them"),
    MANY_VALUES("has too many values"),
    ENDS_IN_ENTITY("ends within an entity"),
    TOO_LARGE("is too large"),
    FILE_OF("a file of at most {0}"),
    NO_COMMENT("has a / that begins no comment"),
    COMMENTS("comments as /* text */"),
    ENDS_IN_COMMENT("ends within a comment"),
    ENDS_IN_ENTITY_OR_SECTION("ends within an entity or a section"),
    BELONGS("has {0} where {1} belongs"),
    BYTE("byte {0}"),
    NO_WORD("has {0} where a word belongs"),
    TOO_LONG("has a text, number or word that is too long"),
    MOST_CHARACTERS("at most {0} characters"),
    ENDS_IN_TEXT("ends within a text"),
    TEXTS("texts in 'single quotes', a quote within doubled"),
    NO_NUMBER("has {0}, which is no number"),
    NUMBERS("numbers such as 12, 1.5 or 2.E-3"),
    BEYOND("has {0}, which is beyond all numbers"),
    BELOW("numbers below 1.E308"),
    NO_ENTITY("has #{0}, which is no entity"),
    ENTITY_NUMBERS("entity numbers from #1 to #{0}");

    private final String sentence;

    ModelSaid(String sentence) {
        this.sentence = sentence;
    }

    /** As it is written. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** For whoever reads back what was written. */
    public static Stream<String> sentences() {
        return Arrays.stream(values()).map(one -> one.sentence);
    }
}
