package drylap.buildingmodel;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * Writes small building models: a house of four walls, 10,000 mm along its south and 8,000 mm along its east, in which a test puts windows. Walls begin at their left end seen
 * from inside: each is placed in its storey, each opening in its wall, each window in its opening.
 */
public final class ModelText {
    /** How the file writes its lengths. */
    public enum Unit {
        MILLIMETRE(1),
        METRE(1000),
        FOOT(304.8),
        INCH(25.4);

        private final double millimetres;

        Unit(double millimetres) {
            this.millimetres = millimetres;
        }
    }

    private final boolean four;
    private final Unit unit;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, String> walls = new LinkedHashMap<>();
    private final Map<String, String> wallPlacements = new LinkedHashMap<>();
    private final Map<String, String> floors = new LinkedHashMap<>();
    private final Map<String, String> floorPlacements = new LinkedHashMap<>();
    private final String building;
    private final String buildingPlacement;
    private int last;

    /** @param north true north as {@code (x,y)}, or blank for none */
    public ModelText(String schema, Unit unit, String north) {
        four = schema.equals("IFC4");
        this.unit = unit;
        lines.add("ISO-10303-21;");
        lines.add("HEADER;");
        lines.add("FILE_DESCRIPTION(('written by a test'),'2;1');");
        lines.add("FILE_NAME('house.ifc','2026-11-26T12:00:00',(''),(''),'','','');");
        lines.add("FILE_SCHEMA(('%s'));".formatted(schema));
        lines.add("ENDSEC;");
        lines.add("DATA;");
        String units = add("IFCUNITASSIGNMENT((%s))".formatted(lengthUnit()));
        String world = placement("$", 0, 0, 0, "$");
        String context = add("IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#%s,%s)"
                .formatted(
                        axes(0, 0, 0, "$").substring(1),
                        north.isEmpty() ? "$" : add("IFCDIRECTION(%s)".formatted(north))));
        String project = add("IFCPROJECT('project',$,'House',$,$,$,$,(%s),%s)".formatted(context, units));
        String site = add("IFCSITE('site',$,'Plot',$,$,%s,$,$,.ELEMENT.,$,$,$,$,$)".formatted(world));
        buildingPlacement = placement(world, 100, 200, 50, "$");
        building = add("IFCBUILDING('building',$,'House',$,$,%s,$,$,.ELEMENT.,$,$,$)".formatted(buildingPlacement));
        aggregate(project, site);
        aggregate(site, building);
    }

    private String lengthUnit() {
        String metre = add("IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.)");
        return switch (unit) {
            case MILLIMETRE -> add("IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.)");
            case METRE -> metre;
            case FOOT, INCH -> {
                String measure =
                        add("IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(%s),%s)".formatted(unit.millimetres / 1000, metre));
                yield add("IFCCONVERSIONBASEDUNIT(#9999,.LENGTHUNIT.,'%s',%s)".formatted(unit.name(), measure));
            }
        };
    }

    /** Adds an entity, and says its number with its sign. */
    public String add(String entity) {
        String id = "#" + ++last;
        lines.add(id + "=" + entity + ";");
        return id;
    }

    private String length(double millimetres) {
        return String.format(Locale.ROOT, "%.9f", millimetres / unit.millimetres);
    }

    private String axes(double x, double y, double z, String direction) {
        String point = add("IFCCARTESIANPOINT((%s,%s,%s))".formatted(length(x), length(y), length(z)));
        String reference = direction.equals("$") ? "$" : add("IFCDIRECTION(%s)".formatted(direction));
        String axis = direction.equals("$") ? "$" : add("IFCDIRECTION((0.,0.,1.))");
        return add("IFCAXIS2PLACEMENT3D(%s,%s,%s)".formatted(point, axis, reference));
    }

    private String placement(String within, double x, double y, double z, String direction) {
        return add("IFCLOCALPLACEMENT(%s,%s)".formatted(within, axes(x, y, z, direction)));
    }

    private void aggregate(String whole, String part) {
        add("IFCRELAGGREGATES('r%d',$,$,$,%s,(%s))".formatted(last, whole, part));
    }

    /** A storey with the four walls of the house, named after it: {@code 1 south} and so on. */
    public ModelText storey(String name, double elevation) {
        floor(name, elevation);
        wall(name, name + " south", 0, 0, "(1.,0.,0.)");
        wall(name, name + " east", 10_000, 0, "(0.,1.,0.)");
        wall(name, name + " north", 10_000, 8_000, "(-1.,0.,0.)");
        return wall(name, name + " west", 0, 8_000, "(0.,-1.,0.)");
    }

    public ModelText floor(String name, double elevation) {
        String placement = placement(buildingPlacement, 0, 0, elevation, "$");
        String floor = add("IFCBUILDINGSTOREY('s%d',$,'%s',$,$,%s,$,$,.ELEMENT.,%s)"
                .formatted(last, name, placement, length(elevation)));
        aggregate(building, floor);
        floors.put(name, floor);
        floorPlacements.put(name, placement);
        return this;
    }

    public ModelText wall(String floor, String name, double x, double y, String along) {
        String placement = placement(Objects.requireNonNull(floorPlacements.get(floor)), x, y, 0, along);
        String wall = add("IFCWALLSTANDARDCASE('w%d',$,'%s',$,$,%s,$,'%d'%s)"
                .formatted(last, name, placement, last, four ? ",$" : ""));
        add("IFCRELCONTAINEDINSPATIALSTRUCTURE('c%d',$,$,$,(%s),%s)".formatted(last, wall, floors.get(floor)));
        walls.put(name, wall);
        wallPlacements.put(name, placement);
        return this;
    }

    /** What the wall's properties say of being an outer one. */
    public ModelText external(String wall, boolean external) {
        String property =
                add("IFCPROPERTYSINGLEVALUE('IsExternal',$,IFCBOOLEAN(.%s.),$)".formatted(external ? "T" : "F"));
        String set = add("IFCPROPERTYSET('p%d',$,'Pset_WallCommon',$,(%s))".formatted(last, property));
        add("IFCRELDEFINESBYPROPERTIES('d%d',$,$,$,(%s),%s)".formatted(last, walls.get(wall), set));
        return this;
    }

    /** A window in the opening of a wall. */
    public ModelText window(String tag, String wall, double along, double sill, double width, double height) {
        return window("'" + tag + "'", "'Window'", wall, along, sill, length(width), length(height));
    }

    /** The same with the parameters as the file has them. */
    public ModelText window(
            String tag, String name, String wall, double along, double sill, String width, String height) {
        String inWall = placement(Objects.requireNonNull(wallPlacements.get(wall)), along, 0, sill, "$");
        String opening = add(
                "IFCOPENINGELEMENT('o%d',$,'Opening',$,$,%s,$,$%s)".formatted(last, inWall, four ? ",.OPENING." : ""));
        String window = window(tag, name, placement(inWall, 0, 0, 0, "$"), width, height);
        add("IFCRELVOIDSELEMENT('v%d',$,$,$,%s,%s)".formatted(last, walls.get(wall), opening));
        add("IFCRELFILLSELEMENT('f%d',$,$,$,%s,%s)".formatted(last, opening, window));
        return this;
    }

    /** A window in no opening, and in no storey. */
    public String window(String tag, String name, String placement, String width, String height) {
        return add("IFCWINDOW('g%d',$,%s,$,$,%s,$,%s,%s,%s%s)"
                .formatted(last, name, placement, tag, height, width, four ? ",.WINDOW.,.SINGLE_PANEL.,$" : ""));
    }

    @Override
    public String toString() {
        return String.join("\n", lines) + "\nENDSEC;\nEND-ISO-10303-21;\n";
    }

    public byte[] bytes() {
        return toString().getBytes(StandardCharsets.UTF_8);
    }
}
