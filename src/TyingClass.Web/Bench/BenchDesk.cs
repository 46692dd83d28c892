using TyingClass.Recipes.Text;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Bench;

/// <summary>Takes the bench's form in and lays the bench out. Nothing is kept on the server: all of it is in the form and the address.</summary>
public sealed class BenchDesk(BenchSolver solver, IHttpContextAccessor accessor, EndpointDataSource endpoints, Visitor visitor,
    Network.ClassAddress classAddress, BenchOrigins origins)
{
    public const string StaleForm =
        "The form had gone stale: it was open for long, or someone signed in or out in this browser meanwhile. Nothing is lost; go on from here.";
    public const string CutShort =
        "The recipe in this address could not be read: it was probably cut short on the way. Ask for the whole address, or for the recipe as text. Here is "
        + "another fly meanwhile.";
    public const string BothChanged =
        "Both the fields and the text had been changed. The text is on the bench now; what the fields said is one step back, under Undo.";

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("There is no bench outside a request.");

    private UnitSystem Units => Look.Of(Http.Request).Units;

    public BenchView Open(BenchAddress address)
    {
        ArgumentNullException.ThrowIfNull(address);
        bool readable = Packed.TryUnpack(address.R, AnswerLimit.MostBytes, out string? text);
        text ??= BenchStart.Text;
        Versions versions = Versions.Unpack(address.H) is { } known && known.Current == text ? known : Versions.Of(text);
        string? beside = Packed.TryUnpack(address.K, AnswerLimit.MostBytes, out string? kept) ? kept : null;
        return Lay(versions, beside, address.Soak, address.Tip, address.Advise == "yes") with
        {
            Notice = address.R is not null && !readable ? CutShort : null,
            Origin = origins.Of(address.From),
        };
    }

    /// <param name="notice">Said instead of what the form itself gives cause to say.</param>
    public BenchView Take(BenchPost post, string? notice = null)
    {
        ArgumentNullException.ThrowIfNull(post);
        BenchMerge merge = BenchMerge.Of(post, solver, Units);
        if (AnswerLimit.Check(merge.Versions.Current) is { } tooLong)
            return new BenchView { Versions = merge.Versions, Beside = post.Beside, Problems = [tooLong], Notice = notice, Origin = origins.Of(post.From) };
        string? beside = post.Action switch { "keep" => merge.Versions.Current, "drop" => null, _ => post.Beside };
        return Lay(merge.Versions, beside, merge.SoakS, post.Number("tip"), post.Action == "advise", post.IsBrief) with
        {
            Notice = notice ?? merge.Notice,
            Origin = post.IsLive ? null : origins.Of(post.From),
        };
    }

    /// <summary>Where a browser without scripting goes on from here; null when that would not fit into an address.</summary>
    public static string? Onward(BenchView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        string address = new BenchAddress(
            Packed.Pack(view.Text), view.Versions.All.Length > 1 ? view.Versions.Pack() : null, view.BesidePacked, view.SoakS,
            view.TipDeg == Tipping.UsualDeg ? null : view.TipDeg, view.Advice is null ? null : "yes", view.Origin?.Page).ToString();
        return view.Notice is null && address.Length <= BenchAddress.Longest ? address : null;
    }

    private BenchView Lay(Versions versions, string? beside, double? soakS, double? tipDeg, bool advise, bool brief = false)
    {
        string text = versions.Current;
        bool soaked = soakS is null;
        double solveS = Math.Max(soakS ?? 0, 0), tip = Math.Clamp(tipDeg ?? Tipping.UsualDeg, 0, 180);
        Solved solved = solver.Solve(text, solveS);
        Solved? kept = beside is null ? null : solver.Solve(beside, solveS);
        return new BenchView
        {
            Versions = versions,
            Problems = solved.Problems,
            Form = Typed.Split(text) is { } draft
                ? new RecipeFormBuilder(draft, solved.Problems, new FreeRules(), solved.Fly?.Built.Assumed ?? []).Build() : null,
            Sliders = solved.Fly is { } built ? Sliders.Of(built.Recipe, built.Built, soakS ?? double.PositiveInfinity, Units) : [],
            Result = solved.Fly is { } fly ? Show(fly, soaked, brief ? null : tip) : null,
            Beside = beside,
            Comparison = !brief && solved.Fly is { } now && kept?.Fly is { } before ? Comparison.Of(before, now, soaked, Units) : null,
            Advice = advise && solved.Fly is { } mended ? BenchAdvice.Of(mended, Units) : null,
            SoakS = soakS,
            TipDeg = tip,
            Address = classAddress.Of(new BenchAddress(Packed.Pack(text), null, null, soakS, null, null).ToString()),
            SaveAt = solved.Fly is not null && visitor.PersonIfReadable is { Role: not Storage.People.Role.Guest } ? PatternsPage : null,
        };
    }

    private BenchResult Show(Recipes.Reports.SolvedFly fly, bool soaked, double? tipDeg)
    {
        BenchResult result = BenchResult.Of(fly, soaked, Units);
        return tipDeg is { } tip ? result with { Rest = BenchRest.Of(fly, result.State, tip, Units) } : result;
    }

    private string? PatternsPage =>
        endpoints.Endpoints.OfType<RouteEndpoint>()
        .Any(e => string.Equals(e.RoutePattern.RawText?.Trim('/'), "patterns/new", StringComparison.OrdinalIgnoreCase)) ? "/patterns/new" : null;
}
