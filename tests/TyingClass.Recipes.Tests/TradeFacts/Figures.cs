using System.Globalization;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>Small tables for docs/trade-facts.md.</summary>
internal static class Figures
{
    public static string Table(string heads, IEnumerable<string> rows)
    {
        string[] columns = heads.Split('|', StringSplitOptions.TrimEntries);
        return string.Join('\n',
        [
            $"| {string.Join(" | ", columns)} |",
            $"|{string.Concat(columns.Select((_, i) => i == 0 ? " --- |" : " ---: |"))}",
            .. rows.Select(row => $"| {row} |"),
        ]);
    }

    /// <summary>"0.12 to 0.48".</summary>
    public static string Range(IEnumerable<double> values, string format)
    {
        double[] all = [.. values];
        return $"{Number(all.Min(), format)} to {Number(all.Max(), format)}";
    }

    public static double Median(IEnumerable<double> values)
    {
        double[] all = [.. values.Order()];
        return (all[(all.Length - 1) / 2] + all[all.Length / 2]) / 2;
    }

    public static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
