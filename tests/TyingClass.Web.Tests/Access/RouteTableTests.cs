using System.Net;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Web.Tests.Access;

public sealed class RouteTableTests(RouteTableTests.Server server) : IClassFixture<RouteTableTests.Server>
{
    private static readonly (string Name, May Role)[] FirstClass = [("nobody", May.Everyone), ("Wren", May.Student), ("Heron", May.Student),
        ("Siskin", May.Evening), ("Otter", May.Mentor), ("Dunlin", May.Deputy), ("Dipper", May.Instructor)];
    private static readonly (string Name, May Role)[] SecondClass = [("Teal", May.Student), ("Linnet", May.Evening), ("Sedge", May.Mentor),
        ("Pipit", May.Deputy), ("Plover", May.Instructor)];

    [Fact]
    public void EveryEndpoint_OfTheProgram_HasARow()
    {
        string[] routes = [.. server.Two.Room.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints).OfType<RouteEndpoint>()
            .Select(e => "/" + e.RoutePattern.RawText!.Trim('/')).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];
        string[] rows = [.. RouteTable.Rows.Select(r => r.Route)];
        Assert.True(routes.Length > 20, "The program's endpoints could not be read.");
        Assert.True(!routes.Except(rows, StringComparer.OrdinalIgnoreCase).Any(),
            $"No row for {string.Join(", ", routes.Except(rows, StringComparer.OrdinalIgnoreCase))}. Say in "
                + "tests/TyingClass.Web.Tests/Access/RouteTable.cs who may open it.");
        Assert.True(!rows.Except(routes, StringComparer.OrdinalIgnoreCase).Any(),
            $"No such address any more: {string.Join(", ", rows.Except(routes, StringComparer.OrdinalIgnoreCase))}. Take its row out of "
                + "tests/TyingClass.Web.Tests/Access/RouteTable.cs.");
    }

    [Fact]
    public async Task EveryRow_OpenedByEachRole_OpensOrNotAsTheTableSays()
    {
        List<string> wrong = [];
        foreach (RouteRow row in RouteTable.Rows)
        {
            foreach ((string name, May role) in FirstClass)
            {
                string got = await server.OpenAsync(name, row);
                string expected = row.Expected(name, role, ofFirstClass: true);
                if (got != expected) wrong.Add($"{row.Address} as {name}: {got}, not {expected}");
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task EveryRowAboutOneClass_OpenedFromAnother_IsRefusedOrUnknown()
    {
        List<string> wrong = [];
        foreach (RouteRow row in RouteTable.Rows.Where(r => r.OfOneClass || r.OpensFor is not null))
        {
            foreach ((string name, May role) in SecondClass)
            {
                string got = await server.OpenAsync(name, row);
                string expected = row.Expected(name, role, ofFirstClass: false);
                if (got != expected) wrong.Add($"{row.Address} as {name}: {got}, not {expected}");
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task EveryRow_PostedToByThoseWhoMayNot_ChangesNothing()
    {
        List<string> wrong = [];
        foreach (RouteRow row in RouteTable.Rows.Where(r => r.May > May.Everyone))
        {
            foreach ((string name, _) in FirstClass.Where(p => !row.IsOpenTo(p.Role)))
            {
                string got = await server.PostAsync(name, row);
                if (got is not ("leads to the door" or "refused")) wrong.Add($"posting to {row.Address} as {name}: {got}");
            }
        }

        Assert.Empty(wrong);
    }

    public sealed class Server : IAsyncLifetime
    {
        public TwoClasses Two { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            Two = await TwoClasses.OpenAsync();
            await Answers.PassFirstAsync(Two.Room.NewBrowser());
            Lend(Two.First.Id, "Siskin", everything: false);
            Lend(Two.First.Id, "Dunlin", everything: true);
            Lend(Two.Second.Id, "Linnet", everything: false);
            Lend(Two.Second.Id, "Pipit", everything: true);
            Two.Room.Store.Evenings.Save(new EveningPlan(Two.First.Id, 2) { Plan = "Not Siskin's." });
        }

        // A student who may run evening 1, or everything.
        private void Lend(string classId, string name, bool everything)
        {
            string hash = Two.Room.Services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, TwoClasses.Passphrase);
            Person person = Two.Room.Store.Accounts.Add(classId, Role.Student, name, hash).Person!;
            Two.Room.Store.Classes.SetDeputy(classId, new Deputy(person.Id, everything, everything ? [] : [1]));
        }

        public ValueTask DisposeAsync()
        {
            Two.Dispose();
            return ValueTask.CompletedTask;
        }

        internal async Task<string> OpenAsync(string name, RouteRow row)
        {
            using HttpResponseMessage response = await (await Two.AsAsync(name)).Client.GetAsync(AddressOf(row), TestContext.Current.CancellationToken);
            return response.StatusCode == row.Says ? "opens" : Words(response);
        }

        internal async Task<string> PostAsync(string name, RouteRow row)
        {
            using FormUrlEncodedContent nothing = new([]);
            using HttpResponseMessage response =
                await (await Two.AsAsync(name)).Client.PostAsync(AddressOf(row), nothing, TestContext.Current.CancellationToken);
            return Words(response);
        }

        private static string Words(HttpResponseMessage response) => response.StatusCode switch
        {
            HttpStatusCode.OK => "opens",
            HttpStatusCode.Redirect when response.Headers.Location!.ToString().Contains("/sign-in?next=", StringComparison.Ordinal) => "leads to the door",
            // A page that only leads on is open.
            HttpStatusCode.Redirect => "opens",
            HttpStatusCode.Forbidden => "refused",
            HttpStatusCode.NotFound => "unknown",
            _ => response.StatusCode.ToString(),
        };

        private Uri AddressOf(RouteRow row) => new(Two.AddressOf(row), UriKind.Relative);
    }
}
