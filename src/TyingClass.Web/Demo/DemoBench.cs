using TyingClass.Balance.Reports;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;

namespace TyingClass.Web.Demo;

/// <summary>
/// The invented patterns, reviews and bench log. They are made day by day in a store of their own under a clock that is put back, so
/// that everything hangs together as if it had been sent in, and are then taken out as an export.
/// </summary>
internal sealed class DemoBench
{
    private readonly ClassStore _store;
    private readonly PutBack _clock;
    private readonly ClassRoom _room;
    private readonly Person _mentor;
    private readonly Dictionary<string, Person> _students;
    private readonly Dictionary<string, Pattern> _patterns = [];
    private readonly DateTimeOffset _now;

    private DemoBench(ClassStore store, PutBack clock, IEnumerable<string> names, DateTimeOffset now)
    {
        (_store, _clock, _now) = (store, clock, now);
        _room = store.Classes.Create("demo-instructor");
        _mentor = store.Accounts.Add(_room.Id, Role.Mentor, DemoPeople.Mentor, "").Person!;
        _students = names.ToDictionary(n => n, n => store.Accounts.Add(_room.Id, Role.Student, n, "").Person!);
    }

    /// <param name="ids">What the people are called in the export that takes these in, by name.</param>
    /// <returns>Nothing but patterns, their revisions and reviews, and the bench log.</returns>
    public static ClassExport Invent(IReadOnlyDictionary<string, string> ids, DateTimeOffset now)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("tying-class-demo-");
        try
        {
            PutBack clock = new(now);
            using ClassStore store = new(DataFolder.At(folder.FullName), clock);
            DemoBench bench = new(store, clock, DemoPeople.Students.Select(s => s.Name), now);
            foreach (DemoPattern pattern in DemoPatterns.All) bench.Live(pattern);
            foreach ((DemoDrop drop, int i) in DemoDrops.All.Select((d, i) => (d, i))) bench.Drop(drop, new Random(611_953 * (i + 1)));
            Dictionary<string, string> renamed = bench._students.Values.Append(bench._mentor).ToDictionary(p => p.Id, p => ids[p.Label]);
            return Renamed(store.Exchange.Export(bench._room.Id)!, renamed);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private void Live(DemoPattern pattern)
    {
        Person owner = _students[pattern.Owner];
        string text = DemoFlies.Text(pattern.Fly), name = RecipeParser.Parse(text).Value!.Name;
        Pattern? own = null;
        foreach (DemoDeed deed in pattern.Deeds)
        {
            _clock.Now = Evening(deed.DaysAgo);
            switch (deed)
            {
                case Saves saves:
                    text = saves.Changes.Aggregate(text, (t, change) => DemoFlies.Change(t, change.Old, change.By));
                    own = own is null ? _store.Patterns.Create(owner.Id, name, text, saves.Note)
                        : _store.Patterns.Save(own.Id, owner.Id, own.Revision, name, text, saves.Note)!.Current;
                    break;
                case Asks asks:
                    _store.Reviews.Ask(own!.Id, owner.Id, _room.Id, asks.Question);
                    break;
                case Says says:
                    _store.Reviews.AddComment(LastRound(own!).Id, _mentor.Id, says.Subject, says.About, says.Text);
                    break;
                case Decides decides:
                    Review round = LastRound(own!);
                    _store.Reviews.Decide(round.Id, _mentor.Id, round.Version, new ReviewDecision(decides.SignsOff, decides.Words));
                    break;
            }
        }

        _patterns[pattern.Fly] = own!;
    }

    private void Drop(DemoDrop drop, Random chance)
    {
        _clock.Now = Evening(drop.DaysAgo);
        Person by = _students[drop.By];
        Pattern pattern = _patterns[drop.Fly];
        string text = _store.Patterns.Revision(pattern.Id, drop.Revision)!.RecipeText;
        bool own = pattern.OwnerId == by.Id;
        FlyForecast forecast = FlyForecast.Of(RecipeParser.Parse(text).Value!, drop.State, drop.WaterC);
        // Estimates: hand-tied flies scatter by some 4 % in mass and 10 % in sink rate, and a protractor on a thread by 2°.
        double Scatter(double share) => 1 + share * (chance.NextDouble() + chance.NextDouble() + chance.NextDouble() - 1.5) / 0.5;
        Seen seen = new()
        {
            Way = drop.Way ?? Computed(forecast.Way),
            MassKg = drop.Weighed ? Math.Round(forecast.MassKg * Scatter(0.04), 5) : null,
            HangAngleRad = drop.Hung ? Math.Max(0, Math.Round(forecast.HangAngleRad * 180 / Math.PI + 2 * (Scatter(1) - 1))) * Math.PI / 180 : null,
            SinkDepthM = drop.Timed && forecast.SinkRateMS > 0 ? drop.DepthM : null,
            SinkTimeS = drop.Timed && forecast.SinkRateMS is > 0 and double rate ? Math.Round(drop.DepthM / (rate * 0.96 * Scatter(0.10)), 1) : null,
            State = drop.State,
            WaterC = drop.WaterC,
        };
        _store.BenchLog.Add(
            by.Id, _room.Id, new TiedFly(pattern.Name, text, own ? FlySource.Pattern : FlySource.Text, own ? pattern.Id : null, own ? drop.Revision : 0), seen,
            new Foreseen(forecast.HangAngleRad, forecast.Way, forecast.MassKg, forecast.SinkRateMS, BalanceEngine.Version), drop.Note);
    }

    // Nobody ties in the small hours: what lies a day or more back falls into the evening, in its order.
    private DateTimeOffset Evening(double daysAgo)
    {
        if (daysAgo < 1) return _now.AddDays(-daysAgo);
        double days = Math.Ceiling(daysAgo);
        return new DateTimeOffset(_now.UtcDateTime.Date, TimeSpan.Zero).AddDays(-days).AddHours(18 + 4 * (days - daysAgo));
    }

    private Review LastRound(Pattern pattern) => _store.Reviews.Of(pattern.Id)[^1];

    private static SeenWay Computed(string way) => way switch
    {
        "point down" => SeenWay.PointDown,
        "point up" => SeenWay.PointUp,
        Telling.Sentences.WayWords.OnItsSide => SeenWay.OnItsSide,
        _ => SeenWay.NoClearWay,
    };

    private static ClassExport Renamed(ClassExport export, Dictionary<string, string> ids) => export with
    {
        Patterns = [.. export.Patterns.Select(p => p with { OwnerId = ids[p.OwnerId] })],
        Reviews = [.. export.Reviews.Select(r => r with { OwnerId = ids[r.OwnerId], DecidedById = r.DecidedById is { } by ? ids[by] : null })],
        ReviewComments = [.. export.ReviewComments.Select(c => c with { ById = ids[c.ById] })],
        BenchLog = [.. export.BenchLog.Select(e => e with { PersonId = ids[e.PersonId] })],
    };

    private sealed class PutBack(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
