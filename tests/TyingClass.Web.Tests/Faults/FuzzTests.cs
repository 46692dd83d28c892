using System.Diagnostics;
using System.Globalization;
using System.Text;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Exchange;
using TyingClass.Web.Bench;
using TyingClass.Web.Tests.Access;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>
/// Every address and every form of the program, as guest, student, mentor and instructor, with fields mangled: none may end in an error of the server's. Each
/// run sends the same so many; with FUZZ_SECONDS=3600 in the environment it goes on for an hour, a quarter of it class files. A failing case is told with
/// its seed.
/// </summary>
public sealed class FuzzTests
{
    private static readonly string[] Strange =
    [
        "", " ", "\0", "\u202E", "'\"<>&", "../../etc/passwd", "-1", "0", "1e999", "NaN", "99999999999999999999", "٣", "½", "\r\n", "%00", "[",
        "]", "..", "true", "hook:\n  size: 8\n", "recipe: [", "{{", "submit", "remove:0", "remove:-1", "up:99999999999", "add", "draw", "as form", "as text",
        "x" + new string('y', 70_000),
    ];

    private static readonly string[] StrangeNames =
        ["r:hook.[", "r:parts[0].size", "r:parts[99999].x", "r:", "n:", "answer", "do", "id", "handler", "next", "step", "move"];

    // By number and not by time: on every machine the same.
    private const int Requests = 1500;
    private const int Files = 300;

    private readonly int? _seconds =
        int.TryParse(Environment.GetEnvironmentVariable("FUZZ_SECONDS"), CultureInfo.InvariantCulture, out int asked) ? asked : null;
    private readonly long _began = Stopwatch.GetTimestamp();

    [Fact]
    public async Task EveryAddressAndForm_MangledBySeed_IsNoErrorOfTheServer()
    {
        int seed = Seed(19);
        Random random = new(seed);
        using TwoClasses two = await TwoClasses.OpenAsync();
        // Wrong passphrases wait; here by a clock that runs fast.
        using Timer clock = new(_ => two.Room.Clock.Advance(TimeSpan.FromSeconds(1)), null, 0, 20);
        Browser guest = two.Room.NewBrowser();
        await Answers.PassFirstAsync(guest);
        Browser[] browsers = [guest, await two.AsAsync("Wren"), await two.AsAsync("Otter"), await two.AsAsync("Dipper")];
        string[] addresses = [.. RouteTable.Rows.Select(two.AddressOf).Where(a => a != "/sign-out").Distinct()];
        int sent = 0;
        while (GoesOn(sent, Requests, 0.75))
        {
            Browser browser = browsers[random.Next(browsers.Length)];
            string address = addresses[random.Next(addresses.Length)];
            string query = $"?{Uri.EscapeDataString(Pick(random, StrangeNames))}={Uri.EscapeDataString(Pick(random, Strange))}";
            string mangled = random.Next(3) == 0 ? address.Split('?')[0] + query : address;
            Sheet page = await browser.OpenAsync(mangled.Length < 8000 ? mangled : address);
            Assert.True((int)page.Status is < 500 or 503, $"seed {seed}, request {sent}: GET {mangled}: {page.Status}");
            sent++;
            foreach (IHtmlFormElement form in page.All("form").OfType<IHtmlFormElement>().Where(f => f.Method == "post").Take(2))
            {
                List<KeyValuePair<string, string>> fields = Mangle(random, [.. Browser.FieldsOf(form)]);
                string to = form.GetAttribute("action") is { Length: > 0 } action ? action : address;
                if (to.StartsWith("/sign-out", StringComparison.Ordinal)) continue;
                Sheet after = await browser.PostAsync(to.Split('#')[0], fields);
                sent++;
                Assert.True((int)after.Status is < 500 or 503, $"seed {seed}, request {sent}: POST {to}: {after.Status} with {Say(fields)}");
            }
        }

        Assert.True(sent >= Requests, $"Only {sent} requests.");
        TestContext.Current.TestOutputHelper?.WriteLine($"{sent} requests, seed {seed}.");
    }

    [Fact]
    public async Task ImportOfAMangledClass_IsTakenAndExportedAgainOrRefusedInWords()
    {
        int seed = Seed(7);
        Random random = new(seed);
        using TwoClasses two = await TwoClasses.OpenAsync();
        using MemoryStream whole = new();
        await ExportJson.WriteAsync(whole, two.Room.Store.Exchange.Export(two.Room.Store.Classes.All()[0].Id)!, TestContext.Current.CancellationToken);
        string json = Encoding.UTF8.GetString(whole.ToArray());
        int taken = 0, refused = 0;
        while (GoesOn(taken + refused, Files, 0.25))
        {
            using MemoryStream mangled = new(Encoding.UTF8.GetBytes(MangleJson(random, json)));
            (ClassExport? export, string? problem) = await ExportJson.ReadAsync(mangled, TestContext.Current.CancellationToken);
            if (export is null)
            {
                Assert.NotEmpty(problem!);
                refused++;
                continue;
            }

            ImportOutcome outcome = two.Room.Store.Exchange.Import(export, "teacher", [.. export.People.Select(_ => new HandedOut("p", "h"))]);
            if (outcome.Room is null)
            {
                Assert.NotEmpty(outcome.Problems);
                refused++;
                continue;
            }

            using MemoryStream again = new();
            await ExportJson.WriteAsync(again, two.Room.Store.Exchange.Export(outcome.Room.Id)!, TestContext.Current.CancellationToken);
            again.Position = 0;
            (ClassExport? back, string? wrong) = await ExportJson.ReadAsync(again, TestContext.Current.CancellationToken);
            Assert.True(back is not null, wrong);
            Assert.Equal(export.Attempts.Count(), back.Attempts.Count());
            taken++;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{taken} taken and exported again, {refused} refused in words, seed {seed}.");
    }

    [Fact]
    public void PackedAddress_Mangled_IsRefusedWithoutAnError()
    {
        Random random = new(Seed(3));
        string packed = Packed.Pack("recipe: Mill Candle\nhook:\n  size: 8\n");
        for (int i = 0; i < 20_000; i++)
        {
            char[] mangled = packed.ToCharArray();
            for (int k = random.Next(1, 4); k > 0; k--) mangled[random.Next(mangled.Length)] = (char)random.Next(1, 300);
            Packed.TryUnpack(new string(mangled)[..random.Next(mangled.Length + 1)], 10_000, out _);
        }
    }

    private static int Seed(int usual) => Environment.GetEnvironmentVariable("FUZZ_SEED") is { } own ? int.Parse(own, CultureInfo.InvariantCulture) : usual;

    private bool GoesOn(int done, int most, double share) =>
        _seconds is { } seconds ? Stopwatch.GetElapsedTime(_began).TotalSeconds < seconds * share : done < most;

    private static List<KeyValuePair<string, string>> Mangle(Random random, List<KeyValuePair<string, string>> fields)
    {
        for (int k = random.Next(1, 4); k > 0; k--)
        {
            int at = random.Next(fields.Count + 1);
            if (at == fields.Count || random.Next(4) == 0) fields.Add(new(Pick(random, StrangeNames), Pick(random, Strange)));
            // The token stays, or nothing would get past it.
            else if (!fields[at].Key.StartsWith("__", StringComparison.Ordinal)) fields[at] = new(fields[at].Key, Pick(random, Strange));
        }

        return fields;
    }

    private static string MangleJson(Random random, string json)
    {
        StringBuilder mangled = new(json);
        for (int k = random.Next(1, 3); k > 0; k--)
        {
            int at = random.Next(mangled.Length);
            switch (random.Next(4))
            {
                case 0:
                    mangled.Remove(at, Math.Min(random.Next(1, 40), mangled.Length - at));
                    break;
                case 1:
                    mangled.Insert(at, Pick(random, ["0", "-", "\"", "null", "[", "}", "\\u0000", "9e99", "\uFFFE"]));
                    break;
                case 2:
                    // A digit for another: what stays readable goes deepest.
                    if (char.IsAsciiDigit(mangled[at])) mangled[at] = (char)('0' + random.Next(10));
                    break;
                default:
                    if (char.IsAsciiLetter(mangled[at])) mangled[at] = (char)('a' + random.Next(26));
                    break;
            }
        }

        return mangled.ToString();
    }

    private static string Pick(Random random, string[] from) => from[random.Next(from.Length)];

    private static string Say(IEnumerable<KeyValuePair<string, string>> fields) =>
        string.Join('&', fields.Select(f => $"{f.Key}={(f.Value.Length > 60 ? f.Value[..60] : f.Value)}"));
}
