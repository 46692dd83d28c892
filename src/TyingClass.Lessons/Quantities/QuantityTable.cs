using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using static TyingClass.Lessons.Quantities.Circumstances;

namespace TyingClass.Lessons.Quantities;

/// <summary>Every quantity that authors and goals can name: the one list behind goals, keys, conditions and practice.</summary>
public static class QuantityTable
{
    private const double Degree = Math.PI / 180;
    private const double MM = 1e-3;
    private const double Gram = 1e-3;
    private const double GramMM = 1e-6;

    public static ImmutableArray<Quantity> All { get; } =
    [
        new("mass", Dimension.Mass, 0.005 * Gram, None, (f, _) => f.Moments(WetState.Soaked).MassKg),
        new("held water", Dimension.Mass, 0.005 * Gram, None, (f, _) => f.Body.Parts.Sum(p => p.HeldWaterKg)),
        new("mass with held water", Dimension.Mass, 0.005 * Gram, None,
            (f, _) => f.Moments(WetState.Soaked).MassKg + f.Body.Parts.Sum(p => p.HeldWaterKg)),
        new("wet weight", Dimension.Mass, 0.005 * Gram, Circumstances.State,
            (f, q) => f.Moments(q.State).WetMassKg(Density(f))),
        new("displaced volume", Dimension.Volume, 1e-9, Circumstances.State, (f, q) => f.Moments(q.State).VolumeM3),
        .. Place("mass center", None, (f, _) => f.Moments(WetState.Soaked).MassCenterM),
        .. Place("center of buoyancy", Circumstances.State, (f, q) => f.Moments(q.State).CenterOfBuoyancyM),
        .. Place("balance point", Circumstances.State, (f, q) => f.Moments(q.State).BalancePointM(Density(f))),
        .. Place("tow point", None, (f, _) => f.Body.TowPointM),
        new("mass center, behind eye", Dimension.Length, 0.1 * MM, None,
            (f, _) => (f.Moments(WetState.Soaked).MassCenterM - f.Body.TowPointM).X),
        new("mass center, below eye", Dimension.Length, 0.1 * MM, None,
            (f, _) => -(f.Moments(WetState.Soaked).MassCenterM - f.Body.TowPointM).Z),
        new("hang angle", Dimension.Angle, 2 * Degree, None,
            (f, _) => BalanceEngine.Hang(f.Body, f.Moments(WetState.Soaked).MassCenterM).ShankFromPlumbDeg * Degree),
        new("level-line keel", Dimension.Length, 0.1 * MM,
            Circumstances.State, LevelLine),

        new("keel height", Dimension.Length, 0.1 * MM, Towed,
            (f, q) => MM * f.Tow(q).KeelHeightMm.For(f.Body.Intent)),
        new("pitch", Dimension.Angle, 2 * Degree, Towed,
            (f, q) => f.Tow(q).Settles ? f.Tow(q).PitchDeg * Degree : null),
        new("lean", Dimension.Angle, 5 * Degree, Towed,
            (f, q) => f.Tow(q).Settles ? f.Tow(q).LeanDeg * Degree : null),
        new("drag", Dimension.Force, 0.2e-3, Towed, (f, q) => f.Tow(q).Settles ? 1e-3 * f.Tow(q).DragMN : null),
        new("lift", Dimension.Force, 0.2e-3, Towed,
            (f, q) => f.Tow(q).Settles ? 1e-3 * f.Tow(q).LiftMN : null),
        new("line angle", Dimension.Angle, 2 * Degree, Towed,
            (f, q) => f.Tow(q).Settles ? f.Tow(q).LineAngleDeg * Degree : null),

        new("sink rate", Dimension.Speed, 0.01, Circumstances.State | Circumstances.Knot, (f, q) => f.Sink(q)?.RateMS),
        new("pitch while sinking", Dimension.Angle, 2 * Degree,
            Circumstances.State | Circumstances.Knot, (f, q) => f.Sink(q)?.PitchDeg * Degree),
        new("lean while sinking", Dimension.Angle, 5 * Degree,
            Circumstances.State | Circumstances.Knot, (f, q) => f.Sink(q)?.LeanDeg * Degree),
        new("depth", Dimension.Length, 20 * MM, Pause | Circumstances.State | Circumstances.Knot,
            (f, q) => f.Sink(q)?.DepthAfterM(q.PauseS ?? 5)),

        new("rides as intended", Dimension.Share, 0.02, Towed,
            (f, q) => f.Tolerance(q).AsIntended),
        new("leans", Dimension.Share, 0.02, Towed,
            (f, q) => f.Tolerance(q).Leaning),
        new("flips", Dimension.Share, 0.02, Towed,
            (f, q) => f.Tolerance(q).Flipped),
        new("righting range", Dimension.Angle, 5 * Degree, Towed,
            (f, q) => f.Roll(q).RangeDeg * Degree),
        new("keel moment of", Dimension.Moment, 0.02 * GramMM, Towed,
            (f, q) => KeelMoment(f, q)),

        new("mass of", Dimension.Mass, 0.002 * Gram, None, (f, q) => Part(f, q)?.Masses.Sum(m => m.MassKg)),
        new("center, x of", Dimension.Length, 0.1 * MM, None,
            (f, q) => Part(f, q) is { } p ? p.Masses.Sum(m => m.MassKg * m.PositionM.X) / p.Masses.Sum(m => m.MassKg) : null),
        new("mass moment of", Dimension.Moment, 0.02 * GramMM, None,
            (f, q) => Part(f, q)?.Masses.Sum(m => m.MassKg * m.PositionM.X)),

        Retrieved(Magnitudes.Hop, 0.02, r => r.HopM),
        Retrieved(Magnitudes.Deepest, 0.05, r => r.DeepestM),
        Retrieved(Magnitudes.Shallowest, 0.05, r => r.ShallowestM),
        Retrieved(Magnitudes.DivePitch, 4 * Degree, r => r.DivePitchDeg * Degree),
        Retrieved(Magnitudes.UprightShare, 0.05, r => r.Ride.Upright),
        Retrieved(Magnitudes.PointDownTime, 0.1, r => r.SettleS),
        new(Magnitudes.CountDepth.Name, Dimension.Length, 0.05, Pause,
            (f, q) => f.Counted(q.PauseS) is { HasDepth: true } r ? r.CountedDepthM : null),
        new("strips until back up", null, 0.5, Depth, (f, q) => f.Retrieved is { HasFigures: true } r ? r.StripsUntilAt(q.DepthM ?? 0.5) : null)
        {
            CountOf = "strips that bring it back up to a depth, half a meter unless said",
        },

        new("parts", null, 0.5, None, (f, _) => f.Recipe.Parts.Length) { CountOf = "parts on the hook" },
        new("added mass", Dimension.Mass, 0.005 * Gram, Circumstances.Start,
            (f, _) => f.Moments(WetState.Soaked).MassKg - f.Start?.Moments(WetState.Soaked).MassKg),
        new("changes", null, 0.5, Circumstances.Start,
            (f, _) => f.Start is { } start ? Grading.ChangeList.Between(start.Recipe, f.Recipe).Length : null)
        {
            CountOf = "things changed from the fly given",
        },
    ];

    private static Quantity Retrieved(Magnitude what, double noticeableSi, Func<RetrieveReport, double?> of) =>
        new(what.Name, what.Dimension, noticeableSi, None, (f, _) => f.Retrieved is { HasFigures: true } report ? of(report) : null)
        {
            IsOfTheRetrieve = true,
        };

    private static readonly FrozenDictionary<string, Quantity> ByName = All.ToFrozenDictionary(q => q.Name, StringComparer.OrdinalIgnoreCase);

    private static readonly ImmutableArray<Quantity> LongestFirst = [.. All.OrderByDescending(q => q.Name.Length)];

    public static Quantity? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>The longest name that stands at <paramref name="start"/>, whole words only.</summary>
    internal static Quantity? LongestAt(string text, int start, out int end)
    {
        foreach (Quantity quantity in LongestFirst)
        {
            end = start + quantity.Name.Length;
            if (end <= text.Length
                && string.Compare(text, start, quantity.Name, 0, quantity.Name.Length, StringComparison.OrdinalIgnoreCase) == 0
                && (end == text.Length || !IsInsideWord(text[end])))
            {
                return quantity;
            }
        }

        end = start;
        return null;
    }

    private static bool IsInsideWord(char c) => char.IsLetterOrDigit(c) || c is '-' or '_' or '[';

    private static double Density(FlyFigures fly) => fly.Conditions.Water.DensityKgM3;

    private static double? LevelLine(FlyFigures fly, QuantityQuery query) =>
        fly.Moments(query.State).BalancePointM(Density(fly)) is { } point
            ? MM * BalanceEngine.LevelLine(fly.Body.TowPointM, point).For(fly.Body.Intent)
            : null;

    private static Balance.Bodies.BodyPart? Part(FlyFigures fly, QuantityQuery query) =>
        fly.Body.Parts.FirstOrDefault(p => string.Equals(p.Name, query.Part, StringComparison.OrdinalIgnoreCase));

    private static double? KeelMoment(FlyFigures fly, QuantityQuery query)
    {
        // The ledger counts the pieces of the hook one by one.
        string[] names = [query.Part!, .. Part(fly, query)?.Pieces.Select(p => p.Name) ?? []];
        LedgerEntry[] entries = [.. fly.Ledger(query).Where(e => names.Contains(e.Part, StringComparer.OrdinalIgnoreCase))];
        return entries.Length == 0 ? null : GramMM * entries.Sum(e => e.KeelMomentGmm);
    }

    private static IEnumerable<Quantity> Place(string name, Circumstances takes, Func<FlyFigures, QuantityQuery, Vector3D?> of) =>
    [
        new($"{name}, x", Dimension.Length, 0.1 * MM, takes, (f, q) => of(f, q)?.X),
        new($"{name}, y", Dimension.Length, 0.1 * MM, takes, (f, q) => of(f, q)?.Y),
        new($"{name}, z", Dimension.Length, 0.1 * MM, takes, (f, q) => of(f, q)?.Z),
    ];
}
