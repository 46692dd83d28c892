using Microsoft.AspNetCore.Mvc.ApplicationModels;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Exchange;

namespace TyingClass.Web.Hosting;

/// <summary>Dates, evenings, questions to the room, and what leaves or enters the server as a file.</summary>
internal static class EveningServices
{
    public static void Add(IServiceCollection services)
    {
        services.AddScoped<ClassCalendar>();
        services.AddScoped<EveningBook>();
        services.AddScoped<LentBoard>();
        services.AddScoped<RoomDesk>();
        services.AddScoped<RegisterCsv>();
        services.AddScoped<FilesDesk>();
        services.AddScoped<NamesDesk>();
        services.AddScoped<StartDesk>();
        services.AddSingleton<PassphraseSlips>();
        services.AddHostedService<BackupAnswers>();
    }

    public static void Protect(PageConventionCollection pages)
    {
        pages.AuthorizeFolder("/Dates", ClassPolicies.Deputy);
        pages.AuthorizeFolder("/Evenings", ClassPolicies.Evening);
        pages.AuthorizeFolder("/Files", ClassPolicies.Instructor);
    }
}
