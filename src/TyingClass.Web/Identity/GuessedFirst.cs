namespace TyingClass.Web.Identity;

/// <summary>
/// Passphrases that whoever guesses tries first: the ten thousand most common ones that became known, names, single words, rows of keys and of figures, and
/// what is made of one of them by a figure behind it or a sign in place of a letter. After the estimator of D. L. Wheeler, "zxcvbn: low-budget password
/// strength estimation", USENIX Security 2016.
/// </summary>
public static class GuessedFirst
{
    /// <summary>
    /// Bits: 16 000 guesses, more than the ten thousand most common ones that OWASP ASVS 4.0.3, 2.1.7, asks for, and half a day of wrong tries at the doors.
    /// </summary>
    private const double FewestBits = 14;

    // What follows is not looked at, so that the work stays small: forty letters of one row of keys are no passphrase, whatever comes behind them.
    private const int MostLooked = 40;

    // Of a name or a code: shorter words stand in many passphrases by chance.
    private const int FewestLetters = 3;

    private static readonly Lazy<global::Zxcvbn.Zxcvbn> Estimator = new(() => new global::Zxcvbn.Zxcvbn());

    private static readonly Lock OneAtATime = new();

    public static bool Contains(string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        // Words run together open the account too, and are guessed sooner than with what stands between them.
        string looked = WordPassphrase.Kept(passphrase[..Math.Min(passphrase.Length, MostLooked)]);
        lock (OneAtATime) return Estimator.Value.EvaluatePassword(looked).Entropy < FewestBits;
    }

    /// <summary>
    /// No letters but those of words that others know, whatever figures and signs stand between: somebody's name, the code of the class. Who sits in the same
    /// room tries those before any list.
    /// </summary>
    public static bool IsMadeOf(string passphrase, params IEnumerable<string?> known)
    {
        ArgumentNullException.ThrowIfNull(known);
        string letters = Letters(passphrase), rest = letters;
        IEnumerable<string> words = known.OfType<string>().SelectMany(k => k.Split([' ', '-', '.', '_'])).Select(Letters);
        foreach (string word in words.Where(w => w.Length >= FewestLetters).OrderByDescending(w => w.Length))
            rest = rest.Replace(word, "", StringComparison.Ordinal);
        return rest.Length == 0 && letters.Length > 0;
    }

    private static string Letters(string text) => new([.. text.Where(char.IsLetter).Select(char.ToLowerInvariant)]);
}
