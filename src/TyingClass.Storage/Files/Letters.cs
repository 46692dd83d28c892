using System.Collections.Frozen;
using System.Text;

namespace TyingClass.Storage.Files;

/// <summary>
/// One spelling for a letter with a mark, however a keyboard sent it: some send é as one character, some as e and a mark.
/// The framework's own normalization asks the machine's libraries and does nothing where they are left out, as they are here; so the
/// Latin letters of names stand in a table. After the canonical decompositions of the Unicode Character Database (UnicodeData.txt).
/// </summary>
internal static class Letters
{
    private static readonly (char Mark, string Plain, string Marked)[] Table =
    [
        ('\u0300', "AEINOUWYaeinouwy", "ÀÈÌǸÒÙẀỲàèìǹòùẁỳ"),
        ('\u0301', "ACEGIKLMNOPRSUWYZacegiklmnoprsuwyz", "ÁĆÉǴÍḰĹḾŃÓṔŔŚÚẂÝŹáćéǵíḱĺḿńóṕŕśúẃýź"),
        ('\u0302', "ACEGHIJOSUWYZaceghijosuwyz", "ÂĈÊĜĤÎĴÔŜÛŴŶẐâĉêĝĥîĵôŝûŵŷẑ"),
        ('\u0303', "AEINOUVYaeinouvy", "ÃẼĨÑÕŨṼỸãẽĩñõũṽỹ"),
        ('\u0304', "AEGIOUYaegiouy", "ĀĒḠĪŌŪȲāēḡīōūȳ"),
        ('\u0306', "AEGIOUaegiou", "ĂĔĞĬŎŬăĕğĭŏŭ"),
        ('\u0307', "CEGIZcegz", "ĊĖĠİŻċėġż"),
        ('\u0308', "AEHIOUWXYaehiouwxy", "ÄËḦÏÖÜẄẌŸäëḧïöüẅẍÿ"),
        ('\u030A', "AUau", "ÅŮåů"),
        ('\u030B', "OUou", "ŐŰőű"),
        ('\u030C', "ACDEGHIKLNORSTUZacdeghiklnorstuz", "ǍČĎĚǦȞǏǨĽŇǑŘŠŤǓŽǎčďěǧȟǐǩľňǒřšťǔž"),
        ('\u0323', "AEIOUYaeiouy", "ẠẸỊỌỤỴạẹịọụỵ"),
        ('\u0326', "STst", "ȘȚșț"),
        ('\u0327', "CDEGHKLNRSTcdeghklnrst", "ÇḐȨĢḨĶĻŅŖŞŢçḑȩģḩķļņŗşţ"),
        ('\u0328', "AEIOUaeiou", "ĄĘĮǪŲąęįǫų"),
    ];

    private static readonly FrozenDictionary<(char Plain, char Mark), char> Composed =
        Table.SelectMany(row => row.Plain.Select((plain, i) => KeyValuePair.Create((plain, row.Mark), row.Marked[i]))).ToFrozenDictionary();

    /// <summary>A letter and its mark as one character where there is one; everything else as it stands.</summary>
    public static string Compose(string text)
    {
        if (!text.Any(c => c is >= '\u0300' and <= '\u036F')) return text;
        StringBuilder composed = new(text.Length);
        foreach (char c in text)
        {
            if (composed.Length > 0 && Composed.TryGetValue((composed[^1], c), out char one)) composed[^1] = one;
            else composed.Append(c);
        }

        return composed.ToString();
    }
}
