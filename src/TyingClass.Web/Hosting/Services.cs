using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.Extensions.WebEncoders;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.People;
using TyingClass.Web.Bench;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;
using TyingClass.Web.Computing;
using TyingClass.Web.Editing;
using TyingClass.Web.Figures;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;
using TyingClass.Web.Pictures;
using TyingClass.Web.Practice;
using TyingClass.Web.Preferences;
using TyingClass.Web.Progress;
using TyingClass.Web.Reviews;
using TyingClass.Web.Security;

namespace TyingClass.Web.Hosting;

internal static class Services
{
    public static void Add(IServiceCollection services, ProgramFolders folders, StartFlags flags)
    {
        services.AddSingleton(folders);
        services.AddSingleton(TimeProvider.System);
        StoreServices.Add(services, folders, flags.AcceptLoss);
        services.AddSingleton(s => ActivatorUtilities.CreateInstance<StartupNotice>(s, flags.NewCode));
        services.AddHostedService(s => s.GetRequiredService<StartupNotice>());
        services.AddHostedService<LessonNotice>();
        AddCourse(services, folders);
        AddPeople(services, folders);
        AddPages(services);
        EveningServices.Add(services);
    }

    private static void AddCourse(IServiceCollection services, ProgramFolders folders)
    {
        services.AddSingleton<ICourseSource>(s => new CourseFolder(folders.LessonsPath, s.GetRequiredService<TimeProvider>(), folders.Data.KeptLessonsPath));
        services.AddMemoryCache(cache => cache.SizeLimit = FlyPictures.MostKeptKB);
        services.AddSingleton<FormulaShelf>();
        services.AddSingleton(Turns.ForThisMachine());
        services.AddSingleton<SolvedFlies>();
        services.AddScoped<FlyCalled>();
        services.AddScoped<FlyPictures>();
        services.AddSingleton<LessonPieces>();
        services.AddScoped<LessonReaders>();
        services.AddScoped<AnswerDesk>();
        services.AddScoped<ExerciseDesk>();
        services.AddSingleton<BenchSolver>();
        services.AddScoped<BenchDesk>();
        services.AddScoped<BenchRun>();
        services.AddScoped<CourseProgress>();
        services.AddScoped<AfterAnswer>();
        services.AddScoped<NewsBoard>();
        services.AddScoped<GuestWords>();
        services.AddScoped<WhoSees>();
        services.AddSingleton<PracticeDraws>();
        services.AddScoped<PracticeSets>();
        services.AddScoped<PracticeDesk>();
        services.AddScoped<ConceptBoard>();
        services.AddScoped<ClassRegister>();
        services.AddScoped<ExerciseAcross>();
        services.AddScoped<PulseReader>();
        services.AddScoped<EveningDays>();
        services.AddSingleton<Demonstrations>();
        services.AddScoped<BriefLines>();
        services.AddScoped<BriefDesk>();
        services.AddScoped<BenchOrigins>();
        services.AddScoped<StudentWhys>();
        services.AddScoped<StudentDesk>();
        services.AddScoped<AttemptDesk>();
        services.AddScoped<ReadingDesk>();
        services.AddScoped<CommentBoard>();
        services.AddScoped<PeopleDesk>();
        services.AddScoped<GuestDesk>();
        services.AddScoped<ClassSetup>();
        AddPatterns(services);
    }

    private static void AddPatterns(IServiceCollection services)
    {
        services.AddScoped<ReaderUnits>();
        services.AddScoped<TimeText>();
        services.AddScoped<FlySheets>();
        services.AddScoped<RevisionPairs>();
        services.AddScoped<PatternDesk>();
        services.AddScoped<PatternSources>();
        services.AddScoped<PatternPages>();
        services.AddScoped<PatternCards>();
        services.AddScoped<ReviewThreads>();
        services.AddScoped<ReviewSheets>();
        services.AddScoped<ReviewTable>();
        services.AddScoped<ReviewDesk>();
        services.AddScoped<WorkBoard>();
        services.AddScoped<Proposals>();
        services.AddScoped<LogDesk>();
        services.AddScoped<LogPages>();
        services.AddHostedService<TrashKeeper>();
        services.AddHostedService<NightlyBackups>();
        services.AddHostedService<DamageWatch>();
        // Those write down what goes wrong and go on; should one end all the same, it ends alone.
        services.Configure<HostOptions>(host => host.BackgroundServiceExceptionBehavior = BackgroundServiceExceptionBehavior.Ignore);
        services.AddSingleton<OwnPages>();
        services.AddHostedService<WarmUp>();
    }

    private static void AddPeople(IServiceCollection services, ProgramFolders folders)
    {
        services.AddHttpContextAccessor();
        services.AddScoped<Visitor>();
        services.AddScoped<ClassAccess>();
        services.AddScoped<Microsoft.AspNetCore.Authorization.IAuthorizationHandler, RightHandler>();
        services.AddScoped<AccountSignIn>();
        services.AddSingleton<AccountLimit>();
        services.AddSingleton<Delays>();
        services.AddSingleton<KnownDevices>();
        services.AddScoped<Doors>();
        services.AddScoped<SignInGuards>();
        services.Configure<PasswordHasherOptions>(o => o.IterationCount = AccountSignIn.Rounds);
        services.AddSingleton<IPasswordHasher<Person>, PasswordHasher<Person>>();
        Squeezing.Add(services);
        KeyFiles.PutAsideTorn(folders.Data.KeysPath);
        services.AddDataProtection().PersistKeysToFileSystem(new DirectoryInfo(folders.Data.KeysPath)).SetApplicationName("TyingClass");
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(AccountSignIn.Configure);
        ClassPolicies.Add(services.AddAuthorizationBuilder());
        services.AddAntiforgery(options =>
        {
            options.Cookie.Name = "tying-form";
            options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
    }

    private static void AddPages(IServiceCollection services)
    {
        services.AddRouting(options => options.LowercaseUrls = true);
        services.AddRazorPages(options =>
        {
            EveningServices.Protect(options.Conventions);
            options.Conventions.AuthorizeFolder("/Patterns", ClassPolicies.Student).AllowAnonymousToPage("/Patterns/New");
            options.Conventions.AuthorizeFolder("/PatternBook", ClassPolicies.Student);
            options.Conventions.AuthorizeFolder("/BenchLog", ClassPolicies.Student).AuthorizePage("/BenchLog/Class", ClassPolicies.Mentor);
            options.Conventions.AuthorizeFolder("/Reviews", ClassPolicies.Mentor);
            // The framework's own check ends in a bare 400 and loses what was typed; FormTokenFilter checks every post instead.
            options.Conventions.ConfigureFilter(new IgnoreAntiforgeryTokenAttribute());
            options.Conventions.ConfigureFilter(new KnownHandlers());
            options.Conventions.ConfigureFilter(new FormTokenFilter());
            options.Conventions.ConfigureFilter(new ArchivedFilter());
            ComputingPages.TakeTurns(options.Conventions);
        });
        // No form here names its fields as jQuery does, and whoever reads such names ends in an error at one without its other bracket.
        services.Configure<MvcOptions>(options =>
        {
            options.ValueProviderFactories.RemoveType<JQueryFormValueProviderFactory>();
            options.ValueProviderFactories.RemoveType<JQueryQueryStringValueProviderFactory>();
        });
        // One field may hold the whole post: the framework's own bound of 4 MB ends in a bare error that loses what was typed. Its bound of 128 MB for files
        // would stop a large class; how large a post may be is BodyLimit's to say. Not by an attribute of the page, which comes after FormDoor has read it.
        services.Configure<FormOptions>(options => (options.ValueLengthLimit, options.ValueCountLimit, options.MultipartBodyLengthLimit) =
            (BodyLimit.MostBytes, BodyLimit.MostFields, Exchange.FilesDesk.MostBytes));
        // Write “ ” – ° ³ as themselves; < > & and quotes stay escaped.
        services.Configure<WebEncoderOptions>(options => options.TextEncoderSettings = new TextEncoderSettings(UnicodeRanges.All));
    }
}
