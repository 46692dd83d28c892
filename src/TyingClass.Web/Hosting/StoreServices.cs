using TyingClass.Storage;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Exchange;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;
using TyingClass.Web.Practice;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Hands each desk the stores it uses, and none the whole data file: only what starts, backs up or fills a class asks for <see cref="ClassStore"/>.
/// </summary>
internal static class StoreServices
{
    public static void Add(IServiceCollection services, ProgramFolders folders, bool acceptLoss)
    {
        services.AddSingleton(s => new ClassStore(folders.Data, s.GetRequiredService<TimeProvider>(), acceptLoss));
        AddOne(services, s => s.Attempts);
        AddOne(services, s => s.Practice);
        AddOne(services, s => s.People);
        AddOne(services, s => s.Patterns);
        AddOne(services, s => s.Reviews);
        AddOne(services, s => s.Photos);
        AddOne(services, s => s.BenchLog);
        AddOne(services, s => s.Accounts);
        AddOne(services, s => s.Instructors);
        AddOne(services, s => s.Classes);
        AddOne(services, s => s.Dates);
        AddOne(services, s => s.Evenings);
        AddOne(services, s => s.RoomQuestions);
        AddOne(services, s => s.Exchange);
        AddOne(services, s => s.Comments);
        AddOne(services, s => s.GuestMoves);
        AddOne(services, s => s.Trash);
        AddOne(services, s => s.RoomChoice);
        AddOne(services, s => s.Starts);
        AddOne(services, s => s.Phrases);
        AddOne(services, s => s.LeftVisits);
        AddOne(services, s => s.Slips);
        AddOne(services, s => s.Damage);
        AddOne(services, s => s.Writes);
        services.AddSingleton<UntilWritten>();
        services.AddSingleton<GuestStores>();
        services.AddSingleton<PatternStores>();
        services.AddSingleton<StartStores>();
        services.AddSingleton<LogStores>();
        services.AddSingleton<PeopleStores>();
        services.AddSingleton<SignInStores>();
        services.AddSingleton<ReviewStores>();
        services.AddSingleton<BriefStores>();
        services.AddSingleton<RoomStores>();
        services.AddSingleton<StudentStores>();
        services.AddSingleton<ConceptStores>();
        services.AddSingleton<PageFiles>();
        services.AddSingleton<FilesThere>();
    }

    private static void AddOne<T>(IServiceCollection services, Func<ClassStore, T> one)
        where T : class => services.AddSingleton(s => one(s.GetRequiredService<ClassStore>()));
}
