package drylap.speech;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * Every sentence that the code hands to be said: the text of the first argument of {@code Speech.it} and {@code Saying.of} (of any
 * {@code new Weakness}, the third), read from the source by the compiler's own parser. Constants are looked up by name.
 */
final class SaidInJava extends TreeScanner<Void, Void> {
    /** Where in the constants of an enum its words stand; they are said by whoever shows one. */
    private static final Map<String, Integer> WORDS_OF_CONSTANTS = Map.ofEntries(
            Map.entry("Step", 1),
            Map.entry("Layer", 0),
            Map.entry("RainRating", 1),
            Map.entry("Apron.Plane", 0),
            Map.entry("WaterPath.Start", 0),
            Map.entry("WaterPath.End", 0),
            Map.entry("Approach", 0),
            Map.entry("SecondLayer", 0),
            Map.entry("Cut", 0),
            Map.entry("Exposed.Part", 0),
            Map.entry("Strip.Kind", 1),
            Map.entry("HoldPoint", 1),
            Map.entry("ReturnReason", 1),
            Map.entry("LeakDefinition", 1),
            Map.entry("ActKind", 1),
            Map.entry("Hand", 0),
            Map.entry("Role", 1),
            Map.entry("Strength", 0),
            Map.entry("RoughVerdict.Grade", 1),
            Map.entry("RoughPlace", 1),
            Map.entry("Rule", 2),
            Map.entry("StartSheet.Step", 0),
            Map.entry("StartSheet.Standing", 0),
            Map.entry("Doubt", 0),
            Map.entry("SizeClass", 0),
            Map.entry("LeftOut", 0),
            Map.entry("ShutCause", 0),
            Map.entry("ContractRule", 2),
            Map.entry("LedgerTerm", 2),
            Map.entry("PlanChange.Reason", 0),
            Map.entry("ForecastSource", 1),
            Map.entry("ClimateSource", 0),
            Map.entry("Scope", 1),
            Map.entry("TryWords", 0),
            Map.entry("SkySource", 0),
            Map.entry("ChangeForm.Kind", 0),
            Map.entry("ForecastWords", 0),
            Map.entry("ScheduleSaid", 0),
            Map.entry("ModelSaid", 0),
            Map.entry("Field", 1),
            Map.entry("LengthUnit", 1),
            Map.entry("LetterMeaning", 1),
            Map.entry("ScheduleOpenings.Listed", 0),
            Map.entry("FolderWords", 0),
            Map.entry("CannotBe", 0),
            Map.entry("FetchOutcome", 1),
            Map.entry("RainPersistence.Bound", 0),
            Map.entry("Compass", 0),
            Map.entry("Lengths.LengthReading.Wrong", 0));

    private static final Set<String> SAY_AT_THE_END = Set.of("Weakness", "Rule");

    /** What they answer is said by whoever calls them. */
    private static final Set<String> SPOKEN_METHODS = Set.of(
            "Words.task",
            "Words.crewOf",
            "Words.approach",
            "CrewDay.standing",
            "WallPresenter.progress",
            "NotPlanned.reason",
            "NotPlanned.remedy",
            "LedgerSheet.term",
            "OpeningPresenter.start");

    private final Map<String, String> constants = new HashMap<>();
    private final Set<String> said = new TreeSet<>();

    static Set<String> under(Path root) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        var scanner = new SaidInJava();
        try (var files = compiler.getStandardFileManager(null, null, null);
                Stream<Path> sources = Files.walk(root)) {
            List<Path> all =
                    sources.filter(path -> path.toString().endsWith(".java")).toList();
            var task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(all));
            List<CompilationUnitTree> units = new java.util.ArrayList<>();
            task.parse().forEach(units::add);
            units.forEach(scanner::noteConstants);
            units.forEach(unit -> scanner.scan(unit, null));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return scanner.said;
    }

    private void noteConstants(CompilationUnitTree unit) {
        for (Tree type : unit.getTypeDecls()) {
            String owner = type instanceof com.sun.source.tree.ClassTree named
                    ? named.getSimpleName().toString()
                    : "";
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitVariable(VariableTree variable, Void nothing) {
                    String value = variable.getInitializer() == null ? null : folded(variable.getInitializer());
                    if (value != null) constants.put(owner + "." + variable.getName(), value);
                    return super.visitVariable(variable, nothing);
                }
            }.scan(type, null);
        }
    }

    private String owner = "";
    /** Within the audit, whose findings are sayings. */
    private boolean audits;

    @Override
    public Void visitCompilationUnit(CompilationUnitTree unit, Void nothing) {
        audits = "drylap.audit".equals(String.valueOf(unit.getPackageName()));
        return super.visitCompilationUnit(unit, nothing);
    }

    @Override
    public Void visitClass(com.sun.source.tree.ClassTree type, Void nothing) {
        if (owner.isEmpty()) {
            owner = type.getSimpleName().toString();
            super.visitClass(type, nothing);
            owner = "";
            return null;
        }
        return super.visitClass(type, nothing);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String method = call.getMethodSelect().toString();
        boolean says = method.equals("it") || method.endsWith(".it") || method.equals("Saying.of");
        if (says && !call.getArguments().isEmpty()) note(call.getArguments().getFirst());
        if (audits && method.equals("findings.add") && call.getArguments().size() > 2)
            note(call.getArguments().get(2));
        return super.visitMethodInvocation(call, nothing);
    }

    /** Constants of enums are made so too. */
    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
        String type = made.getIdentifier().toString();
        boolean saysMore = SAY_AT_THE_END.contains(type) || owner.equals("RoughVerdict") && type.equals("Grade");
        if (saysMore) note(made.getArguments().getLast());
        Integer words = WORDS_OF_CONSTANTS.get(type.equals(owner) ? owner : owner + "." + type);
        if (words != null) note(made.getArguments().get(words));
        return super.visitNewClass(made, nothing);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
        if (SPOKEN_METHODS.contains(owner + "." + method.getName())) noteAll(method.getBody());
        return super.visitMethod(method, nothing);
    }

    @Override
    public Void visitVariable(VariableTree variable, Void nothing) {
        if (owner.equals("Words") && variable.getName().contentEquals("COMPASS")) noteAll(variable.getInitializer());
        return super.visitVariable(variable, nothing);
    }

    @Override
    public Void visitAnnotation(AnnotationTree annotation, Void nothing) {
        if (annotation.getAnnotationType().toString().equals("Menu"))
            for (var argument : annotation.getArguments())
                if (argument instanceof AssignmentTree one
                        && one.getVariable().toString().equals("title")) note(one.getExpression());
        return super.visitAnnotation(annotation, nothing);
    }

    private void noteAll(Tree tree) {
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitLiteral(LiteralTree literal, Void nothing) {
                note(literal);
                return null;
            }
        }.scan(tree, null);
    }

    /** A choice between sentences is all of them. */
    private void note(ExpressionTree argument) {
        switch (argument) {
            case ParenthesizedTree inner -> note(inner.getExpression());
            case ConditionalExpressionTree either -> {
                note(either.getTrueExpression());
                note(either.getFalseExpression());
            }
            case SwitchExpressionTree choice ->
                choice.getCases().forEach(one -> {
                    if (one.getBody() instanceof ExpressionTree body) note(body);
                    else if (one.getBody() instanceof com.sun.source.tree.ExpressionStatementTree body)
                        note(body.getExpression());
                });
            default -> {
                String text = folded(argument);
                if (text != null) said.add(text);
            }
        }
    }

    private @Nullable String folded(ExpressionTree text) {
        return switch (text) {
            case LiteralTree literal -> literal.getValue() instanceof String words ? words : null;
            case ParenthesizedTree inner -> folded(inner.getExpression());
            case BinaryTree both when both.getKind() == Tree.Kind.PLUS -> joined(both);
            case IdentifierTree name -> constants.get(owner + "." + name.getName());
            case MemberSelectTree name -> constants.get(name.toString());
            default -> null;
        };
    }

    private @Nullable String joined(BinaryTree both) {
        String left = folded(both.getLeftOperand());
        String right = folded(both.getRightOperand());
        return left == null || right == null ? null : left + right;
    }
}
