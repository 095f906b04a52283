package thalweg.house;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The keys that sources ask the phrases for, and the keys that anything in them may name.
 *
 * <p>A key is asked for where a literal, or a constant of the same file, is the first argument of {@code say};
 * {@code count} of the phrases asks for both of its forms. A literal that ends in a dot names every key that begins with
 * it, because the rest is put together while the program runs; so does the name of a list that is handed to {@code word},
 * or to anything but {@code say} of the phrases or wording.
 */
final class PhraseKeys {

    private static final Pattern IN_TEMPLATE = Pattern.compile("(\\bsay\\(\\s*)?\"([^\"\\\\\\n]*)\"");

    /** What objects that turn values into words are called. */
    private static final Set<String> SPEAKERS = Set.of("phrases", "wording", "words");

    private static final Set<String> ASKING = Set.of("say", "caution");

    /** Asked for: the key and the place that asks. */
    private final Map<String, String> asked = new HashMap<>();

    private final Set<String> literals = new HashSet<>();

    /** Takes in a Java source. */
    void add(JavaSource source) {
        Map<String, String> constants = new HashMap<>();
        new TreeScanner<Object, Object>() {
            @Override
            public Object visitVariable(VariableTree variable, Object nothing) {
                if (isText(variable.getInitializer())) {
                    constants.put(variable.getName().toString(), text(variable.getInitializer()));
                }
                return super.visitVariable(variable, nothing);
            }

            @Override
            public Object visitLiteral(LiteralTree literal, Object nothing) {
                if (isText(literal)) {
                    literals.add(text(literal));
                }
                return super.visitLiteral(literal, nothing);
            }
        }.scan(source.unit(), null);
        new TreeScanner<Object, Object>() {
            @Override
            public Object visitMethodInvocation(MethodInvocationTree call, Object nothing) {
                if (isSay(call.getMethodSelect()) && !call.getArguments().isEmpty()) {
                    ExpressionTree key = call.getArguments().get(0);
                    if (isText(key)) {
                        asked.putIfAbsent(text(key), source.at(key, ""));
                    } else if (key instanceof IdentifierTree constant
                            && constants.containsKey(constant.getName().toString())) {
                        asked.putIfAbsent(constants.get(constant.getName().toString()), source.at(key, ""));
                    }
                }
                if (isCount(call.getMethodSelect())
                        && isText(call.getArguments().get(0))) {
                    String key = text(call.getArguments().get(0));
                    for (String form : List.of(key + ".one", key + ".other")) {
                        asked.putIfAbsent(form, source.at(call, ""));
                        literals.add(form);
                    }
                }
                if (isWord(call.getMethodSelect())) {
                    call.getArguments().stream()
                            .filter(PhraseKeys::isText)
                            .forEach(list -> literals.add(text(list) + "."));
                }
                return super.visitMethodInvocation(call, nothing);
            }
        }.scan(source.unit(), null);
    }

    /**
     * Takes in a template of a page.
     *
     * @param name path below the checkout
     * @param lines of the template
     */
    void add(String name, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            for (MatchResult found : IN_TEMPLATE.matcher(lines.get(i)).results().toList()) {
                literals.add(found.group(2));
                if (found.group(1) != null) {
                    asked.putIfAbsent(found.group(2), name + ":" + (i + 1) + ": ");
                }
            }
        }
    }

    private static boolean isSay(ExpressionTree method) {
        return method instanceof MemberSelectTree member
                ? ASKING.contains(member.getIdentifier().toString())
                : method instanceof IdentifierTree plain
                        && ASKING.contains(plain.getName().toString());
    }

    /** Phrases have a form for one and a form for every other number. */
    private static boolean isCount(ExpressionTree method) {
        return method instanceof MemberSelectTree member
                && member.getIdentifier().contentEquals("count")
                && member.getExpression().toString().matches("(.*\\.)?phrases(\\(\\))?");
    }

    private static boolean isWord(ExpressionTree method) {
        if (method instanceof MemberSelectTree member) {
            String receiver = member.getExpression().toString();
            return member.getIdentifier().contentEquals("word")
                    || (SPEAKERS.contains(receiver) && !member.getIdentifier().contentEquals("say"));
        }
        return method instanceof IdentifierTree plain && plain.getName().contentEquals("word");
    }

    private static boolean isText(@Nullable Tree tree) {
        return tree != null && tree.getKind() == Tree.Kind.STRING_LITERAL;
    }

    private static String text(Tree literal) {
        return String.valueOf(((LiteralTree) literal).getValue());
    }

    /** Sentences about keys that are asked for and have no phrase, each with the place that asks. */
    List<String> missing(Collection<String> phrases) {
        List<String> findings = new ArrayList<>();
        asked.forEach((key, place) -> {
            if (!phrases.contains(key)) {
                findings.add(place + "no phrase has the key " + key);
            }
        });
        return findings.stream().sorted().toList();
    }

    /** Whether some literal names the key, whole or by a beginning that ends in a dot. */
    boolean isUsed(String key) {
        return literals.contains(key)
                || literals.stream()
                        .anyMatch(literal -> literal.length() > 1 && literal.endsWith(".") && key.startsWith(literal));
    }
}
