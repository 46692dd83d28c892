using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using Xunit;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Counts where engine and oracle agree, and lists where they do not.</summary>
internal sealed class OracleTally
{
    private const double AgreeDeg = 0.5;

    private int _single, _several, _none;
    private double _worst;

    private readonly List<string> _misses = [];

    /// <summary>Compares both wet states of one fly, releasing it from near the intended attitude and from one at random.</summary>
    public void Compare(string name, FlyBody body, FishingConditions conditions, BalanceReport report, int seed)
    {
        foreach (StateReport state in report.States)
        {
            OracleTow tow = new(new OracleFly(body, conditions, state.State == WetState.Soaked));
            Random random = new(seed);
            OracleQuaternion intended = body.Intent == Intent.PointDown ? new(1, 0, 0, 0) : new(0, 1, 0, 0);
            OracleQuaternion[] releases = [intended * OracleQuaternion.Turn(new(1, 0.3, 0.2), 0.1), OracleQuaternion.Random(random)];
            foreach (OracleQuaternion release in releases)
            {
                OracleRest rest = tow.Run(release.Unit(), random);
                Judge($"{name} {state.State}", body.Intent, state, rest);
            }
        }
    }

    /// <summary>No miss, and hardly a fly that was never judged.</summary>
    public void Check(ITestOutputHelper output)
    {
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"single {_single}, several {_several}, none reported {_none}, worst agreement {_worst:F3}°, "
                + $"misses {_misses.Count}\n{string.Join('\n', _misses)}"));
        Assert.Empty(_misses);
        Assert.True(_single >= 900, $"only {_single} releases of flies with a single stable attitude");
        Assert.True(_several >= 20, $"only {_several} releases of flies with several");
    }

    private void Judge(string name, Intent intent, StateReport state, OracleRest rest)
    {
        string reported = string.Join(" | ", state.Attitudes.Select(a => Text(a.PitchDeg, a.LeanDeg)));
        if (state.Attitudes.Length == 0)
        {
            _none++;
            if (rest.Settled) _misses.Add($"{name}: none reported, the oracle rests at {Text(rest.PitchDeg, rest.LeanDeg(intent))}");
            return;
        }

        if (!rest.Settled)
        {
            _misses.Add($"{name}: the oracle never rests, last at {Text(rest.PitchDeg, rest.LeanDeg(intent))}; reported {reported}");
            return;
        }

        if (state.Attitudes.Length == 1) _single++;
        else _several++;
        double miss = state.Attitudes.Min(a => rest.MissDeg(a.PitchDeg, a.LeanDeg, intent));
        if (state.Attitudes.Length == 1) miss = Math.Max(miss, rest.MissDeg(state.AtFishingSpeed.PitchDeg, state.AtFishingSpeed.LeanDeg, intent));
        if (miss <= AgreeDeg) _worst = Math.Max(_worst, miss);
        else _misses.Add(
            $"{name} (settles: {state.AtFishingSpeed.Settles}): the oracle rests at {Text(rest.PitchDeg, rest.LeanDeg(intent))}; reported {reported}; at "
                + $"fishing speed {Text(state.AtFishingSpeed.PitchDeg, state.AtFishingSpeed.LeanDeg)}");
    }

    private static string Text(double pitch, double lean) =>
        string.Create(CultureInfo.InvariantCulture, $"pitch {pitch:F2} lean {lean:F2}");
}
