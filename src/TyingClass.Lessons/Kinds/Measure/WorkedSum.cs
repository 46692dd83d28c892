using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Parts;
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
        ImmutableArray<WorkedRow> rows = !task.Sum.IsEmpty ? [.. task.Sum.Select(l => l.Row(query, units))]
            : OnPaper(paper => task.Done is null ? SumRows.Of(query, fly, paper)
                : WorkedChange.Rows(query, new FlyFigures(GivenFly.Of(text)), fly, paper), query, units);
        if (rows.IsEmpty || task.Sum.IsEmpty && Math.Abs(rows[^1].Si - key) > task.ToleranceSi) return null;
        bool read = GoalReader.TryRead(query.Quantity, answerText.Trim(), out double answer, out _);
        string yours = read ? query.SayTyped(answerText, answer, units) : "";
        return new WorkedSum(rows, yours, read ? Place(rows, answer, key, task.ToleranceSi, yours) : null);
    }

    /// <summary>With as few digits as it takes for the sum, as it is printed, to come out at the engine's figure, as that is printed.</summary>
    internal static ImmutableArray<WorkedRow> OnPaper(Func<Paper, IEnumerable<WorkedRow>> rows, QuantityQuery query, UnitSystem units)
    {
        for (int more = 0; ; more++)
        {
            ImmutableArray<WorkedRow> found = [.. rows(new Paper(units, more))];
            if (found.IsEmpty || found[^1].Result == query.Say(found[^1].Si, units)) return found;
            if (more == Paper.MostMore) return found.SetItem(found.Length - 1, found[^1] with { Result = query.Say(found[^1].Si, units) });
        }
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

/// <summary>The lines of the sum for one quantity. Their texts are worked out on paper, their values by the engine.</summary>
internal static class SumRows
{
    public static IEnumerable<WorkedRow> Of(QuantityQuery query, FlyFigures fly, Paper paper)
    {
        bool soaked = query.State == WetState.Soaked;
        string name = query.Quantity.Name;
        return name switch
        {
            "mass" => Added(fly, MassKg, (Magnitudes.PartMass, query.Quantity.Magnitude), paper),
            "held water" => Added(fly, p => p.HeldWaterKg, (Magnitudes.HeldWater, query.Quantity.Magnitude), paper),
            "mass with held water" => WithWater(fly, paper),
            "displaced volume" => Added(fly, p => VolumeM3(p, soaked), (Magnitudes.DisplacedVolume, query.Quantity.Magnitude), paper),
            "wet weight" => InWater(fly, soaked, paper),
            "mass of" when query.Part is { } part => OfPart(fly, part, paper),
            "mass center, x" => Center(fly, MassKg, PlaceOf(p => p.X), Magnitudes.PartMass, paper),
            "mass center, z" => Center(fly, MassKg, PlaceOf(p => p.Z), Magnitudes.PartMass, paper),
            "balance point, x" => Center(fly, p => WetKg(fly, p, soaked), WetPlaceOf(fly, soaked, p => p.X), Magnitudes.WetWeight, paper),
            "balance point, z" => Center(fly, p => WetKg(fly, p, soaked), WetPlaceOf(fly, soaked, p => p.Z), Magnitudes.WetWeight, paper),
            "level-line keel" => LevelLine(fly, query, paper),
            "hang angle" => Hang(fly, paper),
            "lean" => Lean(fly, query, paper),
            "line angle" => LineAngle(fly, query, paper),
            // A sink rate is found where push and pull are alike, step by step: no sum comes out at it that was not made from it.
            _ => [],
        };
    }

    private static IEnumerable<WorkedRow> Added(FlyFigures fly, Func<BodyPart, double> of, (Magnitude Term, Magnitude? Total) told, Paper paper)
    {
        double sum = 0, written = 0;
        foreach (BodyPart part in fly.Body.Parts.Where(p => of(p) != 0))
        {
            PaperFigure term = paper.Write(of(part), told.Term);
            (sum, written) = (sum + of(part), written + term.Si);
            yield return new WorkedRow(part.Name, "", of(part), term.Text);
        }

        yield return new WorkedRow(WorkedWords.Together, "", sum, (told.Total ?? told.Term).Say(written, paper.Units));
    }

    private static IEnumerable<WorkedRow> WithWater(FlyFigures fly, Paper paper)
    {
        (double dry, PaperFigure dryWritten, string parts) = Terms(MassKg, Magnitudes.PartMass);
        (double water, PaperFigure waterWritten, _) = Terms(p => p.HeldWaterKg, Magnitudes.HeldWater);
        string drunk = string.Join(" + ", fly.Body.Parts.Where(p => p.HeldWaterKg > 0).Select(Drunk));
        return
        [
            new WorkedRow(WorkedWords.DryFly, parts, dry, dryWritten.Text), new WorkedRow(WorkedWords.WaterHeld, drunk, water, waterWritten.Text),
            new WorkedRow(WorkedWords.Together, $"{dryWritten.Text} + {waterWritten.Text}", dry + water,
                Magnitudes.MassWithHeldWater.Say(dryWritten.Si + waterWritten.Si, paper.Units)),
        ];

        // "0.1 g × 2": so many grams of water for a gram of what drinks.
        string Drunk(BodyPart part) => MassKg(part) > 0
            ? $"{paper.Write(MassKg(part), Magnitudes.PartMass).Text} × {Numbers.Write(part.HeldWaterKg / MassKg(part), 2)}"
            : paper.Write(part.HeldWaterKg, Magnitudes.HeldWater).Text;

        (double Si, PaperFigure Written, string Sum) Terms(Func<BodyPart, double> of, Magnitude told)
        {
            double[] terms = [.. fly.Body.Parts.Select(of).Where(kg => kg > 0)];
            PaperFigure[] written = [.. terms.Select(kg => paper.Write(kg, told))];
            return (terms.Sum(), paper.Write(written.Sum(w => w.Si), told), string.Join(" + ", written.Select(w => w.Text)));
        }
    }

    private static IEnumerable<WorkedRow> InWater(FlyFigures fly, bool soaked, Paper paper)
    {
        double mass = fly.Body.Parts.Sum(MassKg), volume = fly.Body.Parts.Sum(p => VolumeM3(p, soaked)), water = volume * DensityOf(fly);
        PaperFigure dry = paper.Write(mass, Magnitudes.Mass), space = paper.Write(volume, Magnitudes.DisplacedVolume), density = paper.Density(DensityOf(fly)),
            pushed = paper.Write(space.Si * density.Si, Magnitudes.Mass);
        return
        [
            new WorkedRow(WorkedWords.DryFly, "", mass, dry.Text),
            new WorkedRow(WorkedWords.WaterPushedAside, $"{space.Text} × {density.Text}", water, pushed.Text),
            new WorkedRow(WorkedWords.LeftInWater, $"{dry.Text} − {pushed.Text}", mass - water, Magnitudes.WetWeight.Say(dry.Si - pushed.Si, paper.Units)),
        ];
    }

    private static IEnumerable<WorkedRow> OfPart(FlyFigures fly, string name, Paper paper)
    {
        if (fly.Body.Parts.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase)) is not { } part) yield break;
        double volume = part.Solids.Sum(s => s.VolumeM3), mass = MassKg(part);
        if (volume <= 0) yield break;
        PaperFigure space = paper.Write(volume, Magnitudes.DisplacedVolume), density = paper.Density(mass / volume);
        string sum = "";
        if (SizeOf(fly, part.Name) is { } sizeM)
        {
            // Length, width and height all go by the size: the metal is so much of that cube.
            PaperFigure size = paper.Size(sizeM), cube = paper.Write(size.Si * size.Si * size.Si, Magnitudes.DisplacedVolume),
                share = paper.Number(volume / cube.Si);
            space = paper.Write(share.Si * cube.Si, Magnitudes.DisplacedVolume);
            sum = $"{share.Text} × {cube.Text}";
            yield return new WorkedRow(WorkedWords.Cube, $"{size.Text} × {size.Text} × {size.Text}", size.Si * size.Si * size.Si, cube.Text);
        }

        yield return new WorkedRow(sum.Length > 0 ? WorkedWords.ShareOfCube(part.Name) : WorkedWords.SpaceIn(part.Name), sum, volume, space.Text);
        yield return new WorkedRow(
            WorkedWords.MassOf(part.Name), $"{space.Text} × {density.Text}", mass, Magnitudes.PartMass.Say(space.Si * density.Si, paper.Units));
    }

    // Of a weight whose shape goes by its size alone.
    private static double? SizeOf(FlyFigures fly, string name)
    {
        int at = FlyBuilder.Names(fly.Recipe.Parts).IndexOf(name);
        return at >= 0 && fly.Recipe.Parts[at] is { SizeM: { } size, MassKg: null } part && KindsOfPart.Of(part).IsWeight ? size : null;
    }

    private static IEnumerable<WorkedRow> Center(FlyFigures fly, Func<BodyPart, double> weight, Func<BodyPart, double> place, Magnitude told, Paper paper)
    {
        paper = paper.Finer;
        (double sum, double moment, double sumWritten, double momentWritten) = (0, 0, 0, 0);
        foreach (BodyPart part in fly.Body.Parts.Where(p => weight(p) != 0))
        {
            double of = weight(part) * place(part);
            PaperFigure kg = paper.Write(weight(part), told), at = paper.Place(place(part)), product = paper.Write(kg.Si * at.Si, Magnitudes.MassMoment);
            (sum, moment) = (sum + weight(part), moment + of);
            (sumWritten, momentWritten) = (sumWritten + kg.Si, momentWritten + product.Si);
            yield return new WorkedRow(part.Name, $"{kg.Text} × {at.Text}", of, product.Text);
        }

        PaperFigure all = paper.Write(momentWritten, Magnitudes.MassMoment), whole = paper.Write(sumWritten, told);
        yield return new WorkedRow(WorkedWords.Center, $"{all.Text} ÷ {whole.Text}", moment / sum, Magnitudes.Place.Say(all.Si / whole.Si, paper.Units));
    }

    private static IEnumerable<WorkedRow> LevelLine(FlyFigures fly, QuantityQuery query, Paper paper)
    {
        if (fly.Moments(query.State).BalancePointM(DensityOf(fly)) is not { } point) yield break;
        double ring = fly.Body.TowPointM.Z, sign = fly.Body.Intent == Intent.PointDown ? 1 : -1;
        PaperFigure tow = paper.Write(ring, Magnitudes.Place), balance = paper.Write(point.Z, Magnitudes.Place);
        yield return new WorkedRow(WorkedWords.RingAbove, "", ring, tow.Text);
        yield return new WorkedRow(WorkedWords.BalanceAbove, "", point.Z, balance.Text);
        (PaperFigure from, PaperFigure less) = sign > 0 ? (tow, balance) : (balance, tow);
        yield return new WorkedRow(WorkedWords.Apart, $"{from.Text} − ({less.Text})", sign * (ring - point.Z),
            Magnitudes.LevelLineKeel.Say(from.Si - less.Si, paper.Units));
    }

    private static IEnumerable<WorkedRow> Hang(FlyFigures fly, Paper paper)
    {
        Vector3D from = fly.Moments(WetState.Soaked).MassCenterM - fly.Body.TowPointM;
        return Tangent((WorkedWords.BehindRing, from.X), (WorkedWords.AboveOrBelow, Math.Abs(from.Z)), Magnitudes.Place, Magnitudes.HangAngle, paper);
    }

    private static IEnumerable<WorkedRow> Lean(FlyFigures fly, QuantityQuery query, Paper paper)
    {
        if (fly.Moments(query.State).BalancePointM(DensityOf(fly)) is not { } point || QuantityQuery.Known("keel height").Of(fly) is not { } keel || keel <= 0)
            return [];
        return Tangent((WorkedWords.KeelHeight, keel), (WorkedWords.OffCenter, Math.Abs(point.Y)), Magnitudes.Place, Magnitudes.Lean, paper);
    }

    private static IEnumerable<WorkedRow> LineAngle(FlyFigures fly, QuantityQuery query, Paper paper)
    {
        double weight = Standard.GravityMS2 * fly.Moments(query.State).WetMassKg(DensityOf(fly));
        if (QuantityQuery.Known("drag").Of(fly) is not { } drag || QuantityQuery.Known("lift").Of(fly) is not { } lift) return [];
        return Tangent((WorkedWords.DragBack, drag), (WorkedWords.WeightLessLift, weight - lift), Magnitudes.Drag, Magnitudes.LineAngle, paper);
    }

    // The angle whose tangent is one side by the other.
    private static IEnumerable<WorkedRow> Tangent((string What, double Si) along, (string What, double Si) across, Magnitude told, Magnitude asked, Paper paper)
    {
        PaperFigure first = paper.Write(along.Si, told), second = paper.Write(across.Si, told);
        PaperFigure ratio = paper.Number(first.Si == 0 ? across.Si / along.Si : second.Si / first.Si);
        // Beyond a right angle the tangent alone does not say which way.
        double angle = Math.Atan2(across.Si, along.Si), written = Math.Atan(ratio.Si) + (along.Si < 0 ? Math.PI : 0);
        return [new WorkedRow(along.What, "", double.NaN, first.Text), new WorkedRow(across.What, "", double.NaN, second.Text),
            new WorkedRow(WorkedWords.AngleWithTangent, $"{second.Text} ÷ {first.Text} = {ratio.Text}", angle, asked.Say(written, paper.Units))];
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
