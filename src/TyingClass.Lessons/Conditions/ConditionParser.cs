using System.Collections.Immutable;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Conditions;

/// <summary>A condition, or what is wrong with it and where.</summary>
/// <param name="Offset">Characters from the start of the text, from 0.</param>
public sealed record ConditionResult(Condition? Condition, int Offset, string Error);

/// <summary>
/// The condition grammar (docs/lessons.md): comparisons of quantities, of the answer and of changes, and plain statements such as
/// "keel height rises" or "cone heavier", joined by "and" (or "but") and "or", with parentheses.
/// </summary>
public static class ConditionParser
{
    private static readonly string[] Fields = ["eye", "gape", "shank", "wire", "bend", "knot", "leader", "speed", "water", "intent"];
    private static readonly string[] Kinds = ["hook", .. KindsOfPart.Words];
    private static readonly string[] Verbs = ["changed", "unchanged", "heavier", "lighter", "forward", "back"];

    public static ConditionResult Parse(string text, ConditionScope scope)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(scope);
        Result<TokenList<ConditionToken>> tokens = new ConditionTokenizer().TryTokenize(text);
        if (!tokens.HasValue) return new ConditionResult(null, Math.Max(0, tokens.ErrorPosition.Absolute), "This sign has no meaning in a condition.");
        if (Unbalanced(tokens.Value) is { } parenthesis)
            return new ConditionResult(null, parenthesis.Position.Absolute,
                parenthesis.Kind == ConditionToken.Open ? "This parenthesis is never closed." : "This parenthesis closes nothing.");
        if (tokens.Value.FirstOrDefault(t => t.Kind == ConditionToken.Word && !IsKnown(t, text)) is
            {
                Kind: ConditionToken.Word,
                Position.HasValue: true
            } unknown)
            return new ConditionResult(null, unknown.Position.Absolute,
                $"“{WordsFrom(unknown, text)}” is not a quantity, a part or a word of conditions.{Hint(WordsFrom(unknown, text))}");
        try
        {
            TokenListParserResult<ConditionToken, Condition> parsed = new Grammar(scope).Whole(tokens.Value);
            return parsed.HasValue
                ? new ConditionResult(parsed.Value, 0, "")
                : new ConditionResult(null, parsed.ErrorPosition.HasValue ? parsed.ErrorPosition.Absolute : text.Length,
                $"This condition cannot be read from here on: {parsed.FormatErrorMessageFragment()}.");
        }
        catch (ConditionException e)
        {
            return new ConditionResult(null, e.Position, e.Message);
        }
    }

    private static Token<ConditionToken>? Unbalanced(TokenList<ConditionToken> tokens)
    {
        Stack<Token<ConditionToken>> open = new();
        foreach (Token<ConditionToken> token in tokens)
        {
            if (token.Kind == ConditionToken.Open) open.Push(token);
            else if (token.Kind == ConditionToken.Close && !open.TryPop(out _)) return token;
        }

        return open.TryPeek(out Token<ConditionToken> last) ? last : null;
    }

    private static bool IsKnown(Token<ConditionToken> token, string text) =>
        Grammar.Words.Contains(token.ToStringValue().ToLowerInvariant()) || text.Length == 0;

    // An unknown name is shown with the words that follow it, up to the next comparison.
    private static string WordsFrom(Token<ConditionToken> token, string text)
    {
        string rest = text[token.Position.Absolute..];
        int end = rest.IndexOfAny(['<', '>', '=', '≤', '≥', '(', ')', '"']);
        string[] words = (end < 0 ? rest : rest[..end]).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(
            ' ', words.TakeWhile(w => w is not ("rises" or "falls" or "is" or "and" or "or" or "but" or "changed" or "unchanged" or "heavier" or "lighter"))
                .DefaultIfEmpty(token.ToStringValue()).Take(4));
    }

    private static string Hint(string words) =>
        Nearest.Hint(words, [.. QuantityTable.All.Select(q => q.Name), .. Kinds, .. Fields]);

    private sealed class Grammar
    {
        public static readonly string[] Words =
        [
            "and", "or", "but", "is", "not", "at", "least", "most", "over", "under", "above", "below", "near", "answer", "change", "in",
            "rises", "falls", .. Verbs, .. Fields, .. Kinds.SelectMany(k => k.Split(' ')), "size",
        ];

        private readonly ConditionScope _scope;

        public Grammar(ConditionScope scope)
        {
            _scope = scope;
            TokenListParser<ConditionToken, Expression> expression = Expressions();
            TokenListParser<ConditionToken, Condition> atom =
                Superpower.Parse.Ref(() => Or!).Between(Token.EqualTo(ConditionToken.Open), Token.EqualTo(ConditionToken.Close)).Try()
                    .Or(AnswerStatement().Try())
                    .Or(TrendStatement().Try())
                    .Or(AlterationStatement().Try())
                    .Or(ComparisonStatement(expression));
            TokenListParser<ConditionToken, Condition> and = atom.AtLeastOnceDelimitedBy(Word("and").Or(Word("but")))
                .Select(parts => parts.Length == 1 ? parts[0] : new AllOf([.. parts]));
            Or = and.AtLeastOnceDelimitedBy(Word("or")).Select(parts => parts.Length == 1 ? parts[0] : new AnyOf([.. parts]));
            Whole = Or.AtEnd().TryParse;
        }

        public Func<TokenList<ConditionToken>, TokenListParserResult<ConditionToken, Condition>> Whole { get; }

        private TokenListParser<ConditionToken, Condition> Or { get; }

        private static TokenListParser<ConditionToken, Token<ConditionToken>> Word(string word) =>
            Token.EqualTo(ConditionToken.Word).Where(t => string.Equals(t.ToStringValue(), word, StringComparison.OrdinalIgnoreCase), $"expected “{word}”");

        private static TokenListParser<ConditionToken, Token<ConditionToken>> Sign(params string[] signs) =>
            Token.EqualTo(ConditionToken.Sign).Where(t => signs.Contains(t.ToStringValue()), $"expected {string.Join(" or ", signs)}");

        private static int At(Token<ConditionToken> token) => token.Position.Absolute;

        private TokenListParser<ConditionToken, Expression> Expressions()
        {
            TokenListParser<ConditionToken, Expression> product = null!;
            TokenListParser<ConditionToken, Expression> sum = null!;
            TokenListParser<ConditionToken, Expression> primary =
                Token.EqualTo(ConditionToken.Number).Select(Expression (t) => new Literal(t.ToStringValue(), 0, At(t)))
                    .Or(Token.EqualTo(ConditionToken.Quantity).Select(Expression (t) => new FigureTerm(Query(t), At(t))))
                    .Or(Word("answer").Select(NumericAnswer))
                    .Or(Word("change").Then(_ => Word("in")).Then(_ => Token.EqualTo(ConditionToken.Quantity))
                    .Select(Expression (t) => new ChangeTerm(StartQuery(t), At(t))))
                    .Or(Sign("-", "−").Then(t => Superpower.Parse.Ref(() => product).Select(Expression (e) => new Scaled(e, -1, At(t)))))
                    .Or(Superpower.Parse.Ref(() => sum).Between(Token.EqualTo(ConditionToken.Open), Token.EqualTo(ConditionToken.Close)));
            product = Superpower.Parse.Chain(Sign("*", "×", "/"), primary, Multiply);
            sum = Superpower.Parse.Chain(Sign("+", "-", "−"), product, (sign, a, b) => new Sum(a, b, sign.ToStringValue() == "+" ? 1 : -1));
            return sum;
        }

        private static Expression Multiply(Token<ConditionToken> sign, Expression a, Expression b)
        {
            if (b is Literal factor && double.TryParse(factor.Text, System.Globalization.CultureInfo.InvariantCulture, out double number))
                return sign.ToStringValue() == "/" && number == 0
                    ? throw new ConditionException(b.Position, "Nothing can be divided by zero.")
                    : new Scaled(a, sign.ToStringValue() == "/" ? 1 / number : number, a.Position);
            if (sign.ToStringValue() != "/" && a is Literal first && double.TryParse(first.Text, System.Globalization.CultureInfo.InvariantCulture, out number))
                return new Scaled(b, number, a.Position);
            throw new ConditionException(b.Position, "Only a plain number may multiply or divide.");
        }

        private TokenListParser<ConditionToken, Condition> ComparisonStatement(TokenListParser<ConditionToken, Expression> expression) =>
            from left in expression
            from relation in Relations()
            from right in expression
            select (Condition)Compare(left, relation, right);

        private static TokenListParser<ConditionToken, Relation> Relations() =>
            Sign("<=", "≤").Value(Relation.AtMost)
                .Or(Sign(">=", "≥").Value(Relation.AtLeast))
                .Or(Sign("!=", "≠").Value(Relation.NotEqual))
                .Or(Sign("<").Value(Relation.Below))
                .Or(Sign(">").Value(Relation.Above))
                .Or(Sign("=").Value(Relation.Equal))
                .Or(Word("is").IgnoreThen(
                    Word("at").IgnoreThen(Word("least").Value(Relation.AtLeast).Or(Word("most").Value(Relation.AtMost)))
                        .Or(Word("over").Or(Word("above")).Value(Relation.Above))
                        .Or(Word("under").Or(Word("below")).Value(Relation.Below))
                        .Or(Word("near").Value(Relation.Near))
                        .Or(Word("not").Value(Relation.NotEqual))
                        .OptionalOrDefault(Relation.Equal)));

        private TokenListParser<ConditionToken, Condition> AnswerStatement() =>
            from answer in Word("answer")
            from verb in Word("is").Or(Sign("=", "!="))
            from not in Word("not").Value(true).OptionalOrDefault()
            from text in Token.EqualTo(ConditionToken.String)
            select (Condition)Choice(text, not || verb.ToStringValue() == "!=");

        private TokenListParser<ConditionToken, Condition> TrendStatement() =>
            from quantity in Token.EqualTo(ConditionToken.Quantity)
            from trend in Word("rises").Value(Trend.Rises).Or(Word("falls").Value(Trend.Falls)).Or(Word("unchanged").Value(Trend.Unchanged))
            select (Condition)new Moves(StartQuery(quantity), trend);

        private TokenListParser<ConditionToken, Condition> AlterationStatement() =>
            from subject in Token.EqualTo(ConditionToken.Path).Select(t => (Position: At(t), Words: t.ToStringValue(), IsPath: true))
                .Or(SubjectWords())
            from verb in Verbs.Select(v => Word(v).Value(v)).Aggregate((a, b) => a.Or(b))
            select (Condition)Alter(subject, verb);

        private static TokenListParser<ConditionToken, (int Position, string Words, bool IsPath)> SubjectWords() =>
            (from words in Token.EqualTo(ConditionToken.Word).Or(Token.EqualTo(ConditionToken.Quantity))
                    .Where(t => !Verbs.Contains(t.ToStringValue().ToLowerInvariant()), "expected a part or a field").AtLeastOnce()
             from number in Token.EqualTo(ConditionToken.Number).Select(t => " " + t.ToStringValue()).OptionalOrDefault("")
             select (At(words[0]), string.Join(' ', words.Select(w => w.ToStringValue())).ToLowerInvariant() + number, false));

        private Altered Alter((int Position, string Words, bool IsPath) subject, string verb)
        {
            if (!_scope.HasStart) throw new ConditionException(subject.Position, "There is no fly given to compare with in this kind of exercise.");
            Alteration alteration = Enum.Parse<Alteration>(verb, ignoreCase: true);
            bool onlyChanges = alteration is Alteration.Changed or Alteration.Unchanged;
            if (subject.IsPath || PathOf(subject.Words) is not null)
                return onlyChanges
                    ? new Altered(subject.IsPath ? subject.Words : PathOf(subject.Words), null, alteration)
                    : throw new ConditionException(subject.Position, $"Only a part can be {verb}; a field can be changed or unchanged.");
            string name = subject.Words;
            ImmutableArray<string> known = _scope.PartNames.IsEmpty ? [.. Kinds] : ["hook", .. _scope.PartNames];
            return known.Contains(name)
                ? new Altered(null, name, alteration)
                : throw new ConditionException(subject.Position,
                $"The fly has no part called “{name}”.{Nearest.Hint(name, [.. known, .. Fields])} It has {string.Join(", ", known)}.");
        }

        private static string? PathOf(string words) => words switch
        {
            "eye" or "gape" or "shank" or "wire" or "bend" => $"hook.{words}",
            "hook size" => "hook.size",
            "knot" or "leader" or "speed" or "water" => $"fishing.{words}",
            "intent" => "intent",
            "parts" => "parts",
            _ => null,
        };

        private AnswerIs Choice(Token<ConditionToken> text, bool not)
        {
            string choice = text.ToStringValue()[1..^1];
            return _scope.Choices.Contains(choice, StringComparer.OrdinalIgnoreCase)
                ? new AnswerIs(choice, not)
                : throw new ConditionException(At(text), _scope.Choices.IsEmpty
                    ? "The answer to this kind of exercise is not one of several choices."
                    : $"“{choice}” is not one of the choices: {string.Join(", ", _scope.Choices)}.");
        }

        private Expression NumericAnswer(Token<ConditionToken> token) => _scope.AnswerIsNumber
            ? new Answer(At(token))
            : throw new ConditionException(At(token), _scope.Choices.IsEmpty
                ? "The answer to this kind of exercise is not a number. Name a quantity of the fly instead."
                : "The answer is one of the choices: write it in quotes, as in answer is \"point up\".");

        private QuantityQuery Query(Token<ConditionToken> token)
        {
            if (!QuantityQuery.TryParse(token.ToStringValue(), out QuantityQuery query, out string error)) throw new ConditionException(At(token), error);
            if (!_scope.HasFly) throw new ConditionException(At(token), "There is no fly in this exercise whose figures could be named.");
            return !_scope.HasStart && query.Quantity.Takes.HasFlag(Circumstances.Start)
                ? throw new ConditionException(At(token), $"“{query.Name}” needs a fly given to compare with.")
                : query;
        }

        private QuantityQuery StartQuery(Token<ConditionToken> token) => _scope.HasStart
            ? Query(token)
            : throw new ConditionException(At(token), "There is no fly given to compare with in this kind of exercise.");

        private RelationCondition Compare(Expression left, Relation relation, Expression right)
        {
            Dimension? dimension = Dimensions.Of(left, _scope.AnswerDimension, out bool known);
            if (!known) dimension = Dimensions.Of(right, _scope.AnswerDimension, out known);
            if (!known) throw new ConditionException(left.Position, "Two plain numbers are compared here. Name a quantity on one side.");
            return new RelationCondition(Dimensions.Read(left, dimension, _scope.AnswerDimension), relation,
                Dimensions.Read(right, dimension, _scope.AnswerDimension));
        }
    }
}
