using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>One line of a sum.</summary>
/// <param name="What">What the line adds or finds: "bead", "together".</param>
/// <param name="Sum">How: "0.12 g × 3.0 mm"; empty where it is read off.</param>
/// <param name="Si">What comes of it, SI.</param>
/// <param name="Result">The same, told.</param>
public sealed record WorkedRow(string What, string Sum, double Si, string Result);

/// <summary>How the figure of a measure is worked out by hand, with the student's own figure beside it.</summary>
/// <param name="Rows">The last is the figure asked for.</param>
/// <param name="Yours">What the student wrote, told; empty where it could not be read.</param>
/// <param name="Remark">Where the student's figure stands in the sum; null where it stands nowhere.</param>
public sealed record WorkedSum(ImmutableArray<WorkedRow> Rows, string Yours, string? Remark)
{
    /// <summary>
    /// Of a change that was predicted, the figures before and after. Null where no sum by hand comes out at the engine's figure within the tolerance, and for
    /// every other kind.
    /// </summary>
    /// <param name="answerText">What the student wrote.</param>
    public static WorkedSum? Of(Exercise exercise, string answerText, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(answerText);
        if (exercise.RecipeText is not { } text) return null;
        if (exercise.Task is PredictTask { Question: ChangeIn }) return WorkedChange.Of(exercise, answerText, units);
        if (exercise.Task is not MeasureTask task) return null;
        QuantityQuery query = task.Query;
        FlyFigures fly = MeasureTask.Measured(exercise);
        if (query.Of(fly) is not { } key) return null;
        ImmutableArray<WorkedRow> rows = task.Done is null ? [.. SumRows.Of(query, fly, units)]
            : [.. WorkedChange.Rows(query, new FlyFigures(GivenFly.Of(text)), fly, units)];
        if (rows.IsEmpty || Math.Abs(rows[^1].Si - key) > task.ToleranceSi) return null;
        bool read = GoalReader.TryRead(query.Quantity, answerText.Trim(), out double answer, out _);
        string yours = read ? query.SayStated(answer, units) : "";
        return new WorkedSum(rows, yours, read ? Place(rows, answer, key, task.ToleranceSi, yours) : null);
    }

    // A figure that stands higher up in the sum is one that stopped there.
    private static string? Place(ImmutableArray<WorkedRow> rows, double answer, double key, double toleranceSi, string yours)
    {
        if (Math.Abs(answer - key) <= toleranceSi) return null;
        double near = Math.Min(toleranceSi, 0.03 * Math.Abs(answer));
        return rows[..^1].FirstOrDefault(r => Math.Abs(r.Si - answer) <= near) is { } row ? WorkedWords.StopsAt(yours, row.What)
            : Math.Abs(answer + key) <= toleranceSi ? WorkedWords.OtherSign(yours)
            : null;
    }
}

/// <summary>The lines of the sum for one quantity.</summary>
internal static class SumRows
{
    public static IEnumerable<WorkedRow> Of(QuantityQuery query, FlyFigures fly, UnitSystem units)
    {
        bool soaked = query.State == WetState.Soaked;
        string name = query.Quantity.Name;
        return name switch
        {
            "mass" => Added(fly, p => MassKg(p), Magnitudes.PartMass, units, WorkedWords.Together),
            "held water" => Added(fly, p => p.HeldWaterKg, Magnitudes.HeldWater, units, WorkedWords.Together),
            "mass with held water" => WithWater(fly, units),
            "displaced volume" => Added(fly, p => VolumeM3(p, soaked), Magnitudes.DisplacedVolume, units, WorkedWords.Together),
            "wet weight" => InWater(fly, soaked, units),
            "mass of" when query.Part is { } part => OfPart(fly, part, units),
            "mass center, x" => Center(fly, MassKg, PlaceOf(p => p.X), Magnitudes.PartMass, units),
            "mass center, z" => Center(fly, MassKg, PlaceOf(p => p.Z), Magnitudes.PartMass, units),
            "balance point, x" => Center(fly, p => WetKg(fly, p, soaked), WetPlaceOf(fly, soaked, p => p.X), Magnitudes.WetWeight, units),
            "balance point, z" => Center(fly, p => WetKg(fly, p, soaked), WetPlaceOf(fly, soaked, p => p.Z), Magnitudes.WetWeight, units),
            "level-line keel" => LevelLine(fly, query, units),
            "hang angle" => Hang(fly, units),
            "lean" => Lean(fly, query, units),
            "line angle" => LineAngle(fly, query, units),
            // A sink rate is found where push and pull are alike, step by step: no sum comes out at it that was not made from it.
            _ => [],
        };
    }

    private static IEnumerable<WorkedRow> Added(FlyFigures fly, Func<BodyPart, double> of, Magnitude told, UnitSystem units, string total)
    {
        double sum = 0;
        foreach (BodyPart part in fly.Body.Parts.Where(p => of(p) != 0))
        {
            sum += of(part);
            yield return new WorkedRow(part.Name, "", of(part), told.Say(of(part), units));
        }

        yield return new WorkedRow(total, "", sum, told.Say(sum, units));
    }

    private static IEnumerable<WorkedRow> WithWater(FlyFigures fly, UnitSystem units)
    {
        WorkedRow dry = Added(fly, MassKg, Magnitudes.PartMass, units, WorkedWords.DryFly).Last(), water =
            Added(fly, p => p.HeldWaterKg, Magnitudes.HeldWater, units, WorkedWords.WaterHeld).Last();
        double sum = dry.Si + water.Si;
        string parts = string.Join(" + ", fly.Body.Parts.Where(p => MassKg(p) > 0).Select(p => Magnitudes.PartMass.Say(MassKg(p), units)));
        string drunk = string.Join(" + ", fly.Body.Parts.Where(p => p.HeldWaterKg > 0).Select(p => Magnitudes.HeldWater.Say(p.HeldWaterKg, units)));
        return [dry with { Sum = parts }, water with { Sum = drunk }, new WorkedRow(WorkedWords.Together, $"{dry.Result} + {water.Result}", sum,
            Magnitudes.MassWithHeldWater.Say(sum, units))];
    }

    private static IEnumerable<WorkedRow> InWater(FlyFigures fly, bool soaked, UnitSystem units)
    {
        double mass = fly.Body.Parts.Sum(MassKg), volume = fly.Body.Parts.Sum(p => VolumeM3(p, soaked)), water = volume * DensityOf(fly), left = mass - water;
        WorkedRow dry = new(WorkedWords.DryFly, "", mass, Magnitudes.Mass.Say(mass, units));
        WorkedRow pushed = new(WorkedWords.WaterPushedAside,
            $"{Magnitudes.DisplacedVolume.Say(volume, units)} × {Stated.Say(DensityOf(fly), Dimension.Density, units)}", water,
            Magnitudes.Mass.Say(water, units));
        return [dry, pushed, new WorkedRow(WorkedWords.LeftInWater, $"{dry.Result} − {pushed.Result}", left, Magnitudes.WetWeight.Say(left, units))];
    }

    private static IEnumerable<WorkedRow> OfPart(FlyFigures fly, string name, UnitSystem units)
    {
        if (fly.Body.Parts.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase)) is not { } part) yield break;
        double volume = part.Solids.Sum(s => s.VolumeM3), mass = MassKg(part);
        if (volume <= 0) yield break;
        yield return new WorkedRow(WorkedWords.SpaceIn(part.Name), "", volume, Magnitudes.DisplacedVolume.Say(volume, units));
        yield return new WorkedRow(WorkedWords.MassOf(part.Name),
            $"{Magnitudes.DisplacedVolume.Say(volume, units)} × {Stated.Say(mass / volume, Dimension.Density, units)}", mass,
            Magnitudes.PartMass.Say(mass, units));
    }

    private static IEnumerable<WorkedRow> Center(FlyFigures fly, Func<BodyPart, double> weight, Func<BodyPart, double> place, Magnitude told, UnitSystem units)
    {
        double sum = 0, moment = 0;
        foreach (BodyPart part in fly.Body.Parts.Where(p => weight(p) != 0))
        {
            double of = weight(part) * place(part);
            (sum, moment) = (sum + weight(part), moment + of);
            yield return new WorkedRow(part.Name, $"{told.Say(weight(part), units)} × {Magnitudes.Place.Say(place(part), units)}", of,
                Magnitudes.MassMoment.Say(of, units));
        }

        yield return new WorkedRow(WorkedWords.Center, $"{Magnitudes.MassMoment.Say(moment, units)} ÷ {told.Say(sum, units)}", moment / sum,
            Magnitudes.Place.Say(moment / sum, units));
    }

    private static IEnumerable<WorkedRow> LevelLine(FlyFigures fly, QuantityQuery query, UnitSystem units)
    {
        if (fly.Moments(query.State).BalancePointM(DensityOf(fly)) is not { } point) yield break;
        double ring = fly.Body.TowPointM.Z, sign = fly.Body.Intent == Intent.PointDown ? 1 : -1, keel = sign * (ring - point.Z);
        WorkedRow tow = new(WorkedWords.RingAbove, "", ring, Magnitudes.Place.Say(ring, units)), balance =
            new(WorkedWords.BalanceAbove, "", point.Z, Magnitudes.Place.Say(point.Z, units));
        yield return tow;
        yield return balance;
        (string from, string less) = sign > 0 ? (tow.Result, balance.Result) : (balance.Result, tow.Result);
        yield return new WorkedRow(WorkedWords.Apart, $"{from} − ({less})", keel, Magnitudes.LevelLineKeel.Say(keel, units));
    }

    private static IEnumerable<WorkedRow> Hang(FlyFigures fly, UnitSystem units)
    {
        Vector3D from = fly.Moments(WetState.Soaked).MassCenterM - fly.Body.TowPointM;
        return Tangent((WorkedWords.BehindRing, from.X), (WorkedWords.AboveOrBelow, Math.Abs(from.Z)), Magnitudes.Place, Magnitudes.HangAngle, units);
    }

    private static IEnumerable<WorkedRow> Lean(FlyFigures fly, QuantityQuery query, UnitSystem units)
    {
        if (fly.Moments(query.State).BalancePointM(DensityOf(fly)) is not { } point || QuantityQuery.Known("keel height").Of(fly) is not { } keel || keel <= 0)
            return [];
        return Tangent((WorkedWords.KeelHeight, keel), (WorkedWords.OffCenter, Math.Abs(point.Y)), Magnitudes.Place, Magnitudes.Lean, units);
    }

    private static IEnumerable<WorkedRow> LineAngle(FlyFigures fly, QuantityQuery query, UnitSystem units)
    {
        double weight = Standard.GravityMS2 * fly.Moments(query.State).WetMassKg(DensityOf(fly));
        if (QuantityQuery.Known("drag").Of(fly) is not { } drag || QuantityQuery.Known("lift").Of(fly) is not { } lift) return [];
        return Tangent((WorkedWords.DragBack, drag), (WorkedWords.WeightLessLift, weight - lift), Magnitudes.Drag, Magnitudes.LineAngle, units);
    }

    // The angle whose tangent is one side by the other.
    private static IEnumerable<WorkedRow> Tangent((string What, double Si) along, (string What, double Si) across, Magnitude told, Magnitude asked,
        UnitSystem units)
    {
        double angle = Math.Atan2(across.Si, along.Si);
        WorkedRow first = new(along.What, "", double.NaN, told.Say(along.Si, units)), second = new(across.What, "", double.NaN, told.Say(across.Si, units));
        return [first, second, new WorkedRow(WorkedWords.AngleWithTangent, $"{second.Result} ÷ {first.Result} = {Numbers.Write(across.Si / along.Si, 2)}",
            angle, asked.Say(angle, units))];
    }

    internal static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);

    private static double VolumeM3(BodyPart part, bool soaked) =>
        part.Solids.Sum(s => s.VolumeM3) + part.Air.Sum(a => a.VolumeM3(soaked ? double.PositiveInfinity : 0));

    private static double WetKg(FlyFigures fly, BodyPart part, bool soaked) => MassKg(part) - DensityOf(fly) * VolumeM3(part, soaked);

    internal static double DensityOf(FlyFigures fly) => fly.Conditions.Water.DensityKgM3;

    private static Func<BodyPart, double> PlaceOf(Func<Vector3D, double> axis) =>
        part => MassKg(part) == 0 ? 0 : part.Masses.Sum(m => m.MassKg * axis(m.PositionM)) / MassKg(part);

    private static Func<BodyPart, double> WetPlaceOf(FlyFigures fly, bool soaked, Func<Vector3D, double> axis) => part =>
    {
        double soak = soaked ? double.PositiveInfinity : 0, wet = WetKg(fly, part, soaked);
        double moment = part.Masses.Sum(m => m.MassKg * axis(m.PositionM)) - DensityOf(fly)
            * (part.Solids.Sum(s => s.VolumeM3 * axis(s.PositionM)) + part.Air.Sum(a => a.VolumeM3(soak) * axis(a.PositionM)));
        return wet == 0 ? 0 : moment / wet;
    };
}
