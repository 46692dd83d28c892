using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>
/// All that the program knows of one kind of part. Whoever would ask which kind a part is asks this instead, found by <see cref="KindsOfPart.Of(PartKind)"/>.
/// </summary>
public abstract class KindOfPart
{
    internal static readonly Figure UsualBluntness =
        Figure.Guess("bluntness of a dressed nose", 0.25, "1", 0.1, 0.4, "from a well-rounded nose to a loose one");

    // Only this project knows how to build one.
    private protected KindOfPart()
    {
    }

    /// <summary>Its line of the catalogue.</summary>
    public abstract PartKind Kind { get; }

    /// <summary>As a recipe writes it: "dumbbell eyes".</summary>
    public virtual string Word => Kind.ToString().ToLowerInvariant();

    /// <summary>"the legs sit on …".</summary>
    public virtual bool IsPlural => false;

    /// <summary>"a bead", "foam".</summary>
    public virtual string WithArticle => IsPlural ? Word : $"a {Word}";

    // ---- The recipe text

    /// <summary>Every key it takes, in the order they are written.</summary>
    public ImmutableArray<string> Keys => PartKeys.Sorted(OwnKeys);

    /// <summary>Where around the shank it may sit.</summary>
    public virtual ImmutableArray<Side> Sides => [Side.Top, Side.Under, Side.Around];

    /// <summary>Where it sits when the recipe does not say.</summary>
    public virtual Side UsualSide => Side.Around;

    /// <summary>Where it is tied on a fly that is meant to ride so, where a form proposes it. Common practice, no source.</summary>
    public virtual Side SideMeant(Intent intent) => UsualSide;

    /// <summary>How far behind the ring a form proposes it when it is the first part, to leave room for the head; null where it sits at the ring.</summary>
    public virtual string? RoomForHead => null;

    /// <summary>What to write instead of a side that is not among <see cref="Sides"/>.</summary>
    internal virtual string SideAdvice => $"It may be {WordList.Or(Sides.Select(Words.AllSides.For))}.";

    /// <summary>The keys it takes beside those of every part.</summary>
    internal abstract ImmutableArray<string> OwnKeys { get; }

    /// <summary>The range of "size", "diameter" or "length".</summary>
    internal virtual Limit LimitOf(string key) => key switch
    {
        "size" => Limits.Size,
        "diameter" => Limits.Diameter,
        _ => Limits.StrandLength,
    };

    /// <summary>What to write instead of a key of other parts.</summary>
    internal virtual string Instead(string key) => "Delete the line.";

    /// <summary>What is wrong with where it ends, when it says so; null when nothing is.</summary>
    internal virtual string? EndComplaint(PartSpec part) => null;

    /// <summary>Other words that tyers use for it, offered where they are typed.</summary>
    internal virtual ImmutableArray<string> OtherNames => [];

    /// <summary>Words that shops use for its sizes, smallest first.</summary>
    internal virtual ImmutableArray<string> SizeWords => [];

    /// <summary>Size in m of one of its <see cref="SizeWords"/>; null for any other word.</summary>
    internal virtual double? SizeNamed(string word) => null;

    /// <summary>True for a bare number that the trade means in inches.</summary>
    internal virtual bool IsInInches(string key, string text) => key == "size" && TradeText.IsFraction(text);

    /// <summary>Ways to say a measure that one may not think of, offered where the words of a card are refused; null for none.</summary>
    internal virtual string? OfferFor(string key) => key switch
    {
        "size" => "A bare fraction is taken in inches: say 7/64, or 2.8 mm.",
        "at" or "to" => "A place may also be said as “bend”, as “behind the bead” or as “0.5 × shank”.",
        "length" => "A length may also be said as “1.5 × shank”.",
        _ => null,
    };

    /// <summary>How a form words one of its keys, where that differs from other parts.</summary>
    public virtual FieldWording? FieldFor(string key) => null;

    // ---- What it is made of

    /// <summary>When the recipe names neither a material nor a density.</summary>
    public abstract string UsualMaterial { get; }

    /// <summary>Names of the materials it is commonly tied of: a hint to the tyer, not a ban.</summary>
    public abstract ImmutableArray<string> SuitedMaterials { get; }

    /// <summary>Counted among the weights when a fly's balance is told.</summary>
    public virtual bool IsWeight => false;

    /// <summary>Dressing, which can seal in more or less air than the table says.</summary>
    public virtual bool CanHoldAir => false;

    /// <summary>Whether a number of the materials table, by its name there, enters its physics: one that does is listed as assumed.</summary>
    internal virtual bool Uses(string figure) => figure is not ("suppleness" or "streamer coefficient" or "width when flat");

    // ---- Its place

    /// <summary>Where it begins when the recipe does not say: in line with the parts before it, in tying order.</summary>
    internal virtual UsualPlace UsualPlace(TiedSoFar tied) => tied.Next(coversWire: true);

    /// <summary>One of those that stand in a row along the shank, so that the next begins where it ends.</summary>
    internal virtual bool IsInRow => Hold != ShankHold.None;

    // ---- Its shape

    /// <summary>What the catalogue page shows of it: every number its shape is taken from when the recipe does not say.</summary>
    public virtual IEnumerable<(string What, Figure Figure)> Figures => [];

    /// <summary>Flat step 1, well-rounded nose near 0: how bluntly its front meets the flow.</summary>
    public virtual Figure NoseBluntness => UsualBluntness;

    /// <summary>Nothing else can share its stretch of shank.</summary>
    public bool TakesTheShankAlone => Hold == ShankHold.Solid;

    /// <summary>What it needs of the shank.</summary>
    internal virtual ShankHold Hold => ShankHold.None;

    /// <summary>Its outline, with what the recipe leaves out filled in and logged.</summary>
    internal abstract PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log);

    /// <summary>False for what is tied in at one place.</summary>
    internal virtual bool MustHaveLength(PartSpec part) => true;

    /// <summary>The stretch of the fly it wraps all round, which hides what is under it from the water; null when it leaves the shank bare.</summary>
    /// <param name="owner">Its place in tying order, from 0.</param>
    internal virtual Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under) => null;

    /// <summary>How far to either side of the middle it can sit, m: what is threaded on the wire stops where its bore meets the wire.</summary>
    internal virtual double PlayM(PartDimensions dimensions, ResolvedHook hook) => double.PositiveInfinity;

    // ---- Its physics

    /// <summary>Mass (estimated when the recipe gives none), volume, air, held water and drag.</summary>
    internal abstract void Build(PartContext part, PartDraft draft);

    /// <summary>The shape that gives it a side force when it lies askew to the flow, or why it has none.</summary>
    internal abstract void AddSideForce(PartContext part, PartDraft draft);

    // ---- What is done with it

    /// <summary>What the adviser may change about it.</summary>
    internal virtual void Advise(PartChange change)
    {
    }

    /// <summary>What may be pulled about at the bench.</summary>
    public virtual IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook) => [];

    /// <summary>Its line of a shopping list.</summary>
    internal virtual Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) =>
        new(SupplyKind.Dressing, SupplyList.Dressing(part), 0, 0, 0, massKg);

    /// <summary>Codes of the cautions it calls for (<see cref="Cautions"/>). What it is made of decides, for most.</summary>
    internal virtual IEnumerable<string> CautionCodes(PartSpec part) => Cautions.OfMaterial(part);

    /// <summary>Codes of what to try before it is bought for this hook.</summary>
    internal virtual IEnumerable<string> FitCodes(PartSpec part, ResolvedHook hook) => [];
}
