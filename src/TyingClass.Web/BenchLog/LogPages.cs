using System.Collections.Immutable;
using TyingClass.Drawing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Measured;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Photos;
using TyingClass.Telling.Sentences;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Pictures;
using TyingClass.Web.Preferences;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.BenchLog;

/// <summary>What the pages of the log read and write.</summary>
public sealed record LogStores(BenchLogStore BenchLog, PatternStore Patterns, PhotoStore Photos, PersonStore People);

/// <summary>
/// Shows entries to those who may see them, and takes what was measured over into the recipe. What a visitor may not see is as if it did not exist.
/// </summary>
public sealed class LogPages(LogStores store, Visitor visitor, ClassAccess access, FlyPictures pictures, ReaderUnits units, ReviewThreads names)
{
    /// <returns>Null for an entry this visitor may not see, or one in the trash.</returns>
    public LogEntry? Find(string entryId) =>
        store.BenchLog.Find(entryId) is { TrashedAt: null } entry && access.MaySeeWorkOf(visitor.Person, entry.PersonId) ? entry : null;

    public LogView? Open(string entryId)
    {
        if (Find(entryId) is not { } entry) return null;
        int revision =
            entry.Fly is { Source: FlySource.Pattern, SourceId: { } id } && store.Patterns.Find(id) is { TrashedAt: null } pattern ? pattern.Revision : 0;
        return new LogView(
            entry, IsMine(entry), names.NameOf(entry.PersonId), pictures.Draw(entry.Fly.RecipeText, fresh: entry.Seen.State == Balance.Reports.WetState.Fresh),
            Agreement.Of(entry, units.Now), revision, IsMine(entry) && entry.Seen.SinkRateMS is not null ? AirParts(entry.Fly.RecipeText) : []);
    }

    /// <returns>Null for a photo this visitor may not see.</returns>
    public byte[]? Photo(string entryId) => Find(entryId)?.PhotoId is { } photoId ? store.Photos.Find(photoId) : null;

    /// <param name="sent">As uploaded; null takes the photo away.</param>
    /// <param name="error">For the person who sent it.</param>
    /// <returns>False when nothing was changed.</returns>
    public bool SetPhoto(string entryId, byte[]? sent, out string error)
    {
        error = "";
        if (visitor.Person is not { } person) return false;
        if (sent is null) return store.BenchLog.SetPhoto(entryId, person.Id, null);
        // Decoding costs; only for whoever owns the entry.
        if (Find(entryId) is not { } entry || !IsMine(entry)) return false;
        return PhotoReader.TryRead(sent, out byte[] jpeg, out error) && store.BenchLog.SetPhoto(entryId, person.Id, jpeg);
    }

    /// <summary>Puts the hook at the mass that the weighed fly asks for.</summary>
    /// <param name="expectedRevision">Of the pattern as the page showed it.</param>
    public TakeOverResult? TakeMass(string entryId, int expectedRevision) =>
        Mine(entryId) is { Seen.MassKg: { } massKg } entry ? Keep(entry, TakeOver.HookMass(entry.Fly.RecipeText, massKg), expectedRevision) : null;

    /// <summary>Lets a part seal in the air that the timed drop asks for.</summary>
    public TakeOverResult? TakeAir(string entryId, int part, int expectedRevision) =>
        Mine(entryId) is { Seen: { SinkRateMS: { } rateMS } seen } entry && AirParts(entry.Fly.RecipeText).Any(p => p.Index == part)
            ? Keep(entry, TakeOver.SealedAir(entry.Fly.RecipeText, part, rateMS, seen.State, seen.WaterC), expectedRevision)
            : null;

    /// <returns>Null for someone who runs no class.</returns>
    public ClassLog? OfClass()
    {
        if (access.Current is not { } room || !access.MentorsOrRuns(visitor.Person, room.Id)) return null;
        ImmutableArray<ClassLogLine> lines = [.. store.BenchLog.OfClass(room.Id)
            .Where(e => store.People.Find(e.PersonId) is { RemovedAt: null })
            .Select(e => new ClassLogLine(e, names.NameOf(e.PersonId), Agreement.WayAgrees(e), Agreement.Of(e, units.Now)))];
        DrawingOptions options =
            new() { Units = units.Now, WidthPx = 640, IdPrefix = "agreement" };
        return ClassLog.Of(room.Name, lines, options);
    }

    private TakeOverResult Keep(LogEntry entry, TakeOver taken, int expectedRevision)
    {
        string done = TakeOverSentence.Of(taken.Outcome, units.Now);
        if (taken.RecipeText is not { } text) return new TakeOverResult(null, 0, done, StatusCodes.Status422UnprocessableEntity);
        string name = RecipeParser.Parse(text).Value!.Name;
        if (expectedRevision == 0)
        {
            Pattern made = store.Patterns.Create(entry.PersonId, name, text, done);
            return new TakeOverResult(made.Id, 1, done);
        }

        string said = entry.Fly.Revision == expectedRevision ? done : $"From revision {entry.Fly.Revision}, which was the one tied. {done}";
        return store.Patterns.Save(entry.Fly.SourceId ?? "", entry.PersonId, expectedRevision, name, text, said) switch
        {
            { Saved: true, Current: var pattern } => new TakeOverResult(pattern.Id, pattern.Revision, said),
            { Current: var pattern } => new TakeOverResult(null, 0,
                $"Revision {pattern.Revision} was saved meanwhile, so nothing was taken over yet. Look at it, then press the button again.",
                StatusCodes.Status409Conflict),
            null => new TakeOverResult(null, 0, "The pattern this fly was tied from lies in the trash: take it back out first.", StatusCodes.Status409Conflict),
        };
    }

    private LogEntry? Mine(string entryId) => Find(entryId) is { } entry && IsMine(entry) ? entry : null;

    private bool IsMine(LogEntry entry) => entry.PersonId == visitor.Person?.Id;

    private static ImmutableArray<AirPart> AirParts(string recipeText)
    {
        if (RecipeParser.Parse(recipeText).Value is not { } recipe) return [];
        ImmutableArray<string> partNames = FlyBuilder.Names(recipe.Parts);
        return [.. recipe.Parts.Select((part, i) => (part, i)).Where(p => KindsOfPart.Of(p.part).CanHoldAir).Select(p => new AirPart(p.i, partNames[p.i]))];
    }
}
