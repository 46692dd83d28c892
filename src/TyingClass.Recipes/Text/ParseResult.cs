using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TyingClass.Recipes.Text;

/// <summary>A value, or every mistake found on the way to one; never both, never neither.</summary>
public sealed class ParseResult<T>
    where T : class
{
    private ParseResult(T? value, ImmutableArray<RecipeError> errors) => (Value, Errors) = (value, errors);

    /// <summary>Null when there are errors.</summary>
    public T? Value { get; }

    /// <summary>In the order of the text; empty when there is a value.</summary>
    public ImmutableArray<RecipeError> Errors { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    public bool Success => Value is not null;

    internal static ParseResult<T> Of(T value) => new(value, []);

    /// <exception cref="ArgumentException">No errors.</exception>
    internal static ParseResult<T> Failed(ImmutableArray<RecipeError> errors) =>
        errors.IsEmpty ? throw new ArgumentException("A failure needs an error.", nameof(errors)) : new(null, errors);
}
