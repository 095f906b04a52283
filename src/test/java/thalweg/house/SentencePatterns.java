package thalweg.house;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The English patterns that sources make sentences of, and every text in them that may be a word of a list. */
final class SentencePatterns {

    /** Patterns that say something: with a letter outside of their gaps. */
    private final Set<String> patterns = new TreeSet<>();

    private final Set<String> literals = new TreeSet<>();
    private final List<String> findings = new ArrayList<>();

    void add(JavaSource source) {
        boolean home = source.name().endsWith("/fault/Sentence.java");
        new TreeScanner<Object, Object>() {
            @Override
            public Object visitLiteral(LiteralTree literal, Object nothing) {
                if (literal.getValue() instanceof String text) {
                    literals.add(text);
                }
                return super.visitLiteral(literal, nothing);
            }

            @Override
            public Object visitMethodInvocation(MethodInvocationTree call, Object nothing) {
                if (isMaking(call.getMethodSelect(), home)
                        && !call.getArguments().isEmpty()) {
                    text(call.getArguments().get(0))
                            .ifPresentOrElse(
                                    SentencePatterns.this::pattern,
                                    () -> findings.add(source.at(call, "the pattern of a sentence is a literal")));
                }
                return super.visitMethodInvocation(call, nothing);
            }
        }.scan(source.unit(), null);
    }

    private void pattern(String text) {
        if (text.replaceAll("\\{[0-9]}", "").chars().anyMatch(Character::isLetter)) {
            patterns.add(text);
        }
    }

    private static boolean isMaking(ExpressionTree method, boolean home) {
        return method instanceof MemberSelectTree member
                ? member.getIdentifier().contentEquals("of")
                        && member.getExpression().toString().equals("Sentence")
                : home
                        && method instanceof IdentifierTree plain
                        && plain.getName().contentEquals("of");
    }

    /** A literal, or several with a plus between. */
    private static Optional<String> text(ExpressionTree tree) {
        if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
            return Optional.of(text);
        }
        if (tree instanceof BinaryTree both && tree.getKind() == Tree.Kind.PLUS) {
            return text(both.getLeftOperand())
                    .flatMap(left -> text(both.getRightOperand()).map(right -> left + right));
        }
        return Optional.empty();
    }

    Set<String> patterns() {
        return patterns;
    }

    Set<String> literals() {
        return literals;
    }

    List<String> findings() {
        return findings;
    }
}
