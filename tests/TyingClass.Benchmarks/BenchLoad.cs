using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Web.Hosting;

namespace TyingClass.Benchmarks;

/// <summary>
/// The bench under a hand on its slider: the real server on loopback, one post after another, each with another size of bead, so that
/// nothing comes from a store. Between posts the same fly's full report is worked out in the same process: the ratio of the two says
/// what the pages add, however busy the machine is.
/// </summary>
internal static partial class BenchLoad
{
    private const int WarmUp = 30;

    public static async Task<int> RunAsync(int edits)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("tyingclass-load");
        await using WebApplication app = Server.Build(["--data", data.FullName, "--urls", "http://127.0.0.1:0"]);
        await app.StartAsync();
        using HttpClient client =
            new() { BaseAddress = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single()) };
        Dictionary<string, string> form = Fields(await client.GetStringAsync(new Uri("/bench", UriKind.Relative)));
        form["live"] = "brief";
        form["gesture"] = "parts[0].size";

        List<double> served = [], reported = [];
        for (int i = -WarmUp; i < edits; i++)
        {
            string size = (3 + 0.004 * (i + WarmUp)).ToString("0.000", CultureInfo.InvariantCulture);
            form["r:parts[0].size"] = $"{size} mm";
            using FormUrlEncodedContent content = new(form);
            long from = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await client.PostAsync(new Uri("/bench", UriKind.Relative), content);
            string html = await answer.Content.ReadAsStringAsync();
            double ms = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
            if (!answer.IsSuccessStatusCode || !html.Contains("bench-side-title", StringComparison.Ordinal))
                throw new InvalidOperationException($"The bench answered {answer.StatusCode} without a drawing.");

            SolvedFly fly = SolvedFly.Solve(RecipeParser.Parse(Text(html)).Value!, ReportOptions.Default with { Flies = 1 });
            from = Stopwatch.GetTimestamp();
            BalanceEngine.Report(fly.Built.Body, fly.Built.Conditions);
            double reportMs = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
            if (i < 0) continue;
            served.Add(ms);
            reported.Add(reportMs);
        }

        Console.WriteLine(FormattableString.Invariant($"{edits} edits, one after another"));
        Console.WriteLine(FormattableString.Invariant($"edit, post to last byte   median {Share(served, 0.5):F1} ms   95 % {Share(served, 0.95):F1} ms"));
        Console.WriteLine(FormattableString.Invariant($"full report alone         median {Share(reported, 0.5):F1} ms   95 % {Share(reported, 0.95):F1} ms"));
        Console.WriteLine(FormattableString.Invariant($"ratio of the medians      {Share(served, 0.5) / Share(reported, 0.5):F2}"));
        await app.StopAsync();
        data.Delete(recursive: true);
        return 0;
    }

    private static double Share(List<double> values, double share) => values.Order().ElementAt((int)(share * (values.Count - 1)));

    // The recipe as the answer shows it, so that the very same fly is reported on.
    private static string Text(string html) => System.Net.WebUtility.HtmlDecode(Area().Match(html).Groups[1].Value);

    private static Dictionary<string, string> Fields(string html)
    {
        Dictionary<string, string> fields = [];
        foreach (Match input in Input().Matches(html))
        {
            string name = Attribute(input.Value, "name"), type = Attribute(input.Value, "type");
            if (name.Length > 0 && type is not "radio" and not "checkbox") fields[name] = Attribute(input.Value, "value");
        }

        foreach (Match select in Select().Matches(html))
        {
            string chosen = Chosen().Match(select.Value).Value;
            fields[Attribute(select.Groups[1].Value, "name")] = chosen.Length > 0 ? Attribute(chosen, "value") : "";
        }

        fields["text"] = Text(html);
        return fields;
    }

    private static string Attribute(string tag, string name) =>
        System.Net.WebUtility.HtmlDecode(Regex.Match(tag, $" {name}=\"([^\"]*)\"").Groups[1].Value);

    [GeneratedRegex("<input[^>]*>")]
    private static partial Regex Input();

    [GeneratedRegex("<select([^>]*)>.*?</select>", RegexOptions.Singleline)]
    private static partial Regex Select();

    [GeneratedRegex("<option[^>]*selected[^>]*>")]
    private static partial Regex Chosen();

    [GeneratedRegex("<textarea[^>]*>\n(.*?)</textarea>", RegexOptions.Singleline)]
    private static partial Regex Area();
}
