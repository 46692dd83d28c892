using TyingClass.Balance.Doubting;

namespace TyingClass.Balance.Retrieving;

/// <summary>What the model's own guesses leave open of a retrieve: from the 5 % to the 95 % quantile of the draws.</summary>
/// <param name="Draws">Draws that could be followed.</param>
/// <param name="HopM">Null when fewer than nine draws in ten have one.</param>
/// <param name="DivePitchDeg">Steepest pitch in the pause; null likewise, or without a pause.</param>
public sealed record RetrieveDoubt(int Draws, Interval? HopM, Interval? DivePitchDeg)
{
    /// <summary>Of the same retrieve, worked out anew for each draw of the estimates.</summary>
    public static RetrieveDoubt Of(IReadOnlyCollection<RetrieveReport> drawn)
    {
        RetrieveReport[] followed = [.. drawn.Where(r => r.HasFigures)];
        return new RetrieveDoubt(
            followed.Length,
            Quantiles.Interval([.. followed.Select(r => r.HopM)]),
            Quantiles.Interval([.. followed.Select(r => r.DivePitchDeg ?? double.NaN)]));
    }
}
