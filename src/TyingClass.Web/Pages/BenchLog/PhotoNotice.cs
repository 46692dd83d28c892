using TyingClass.Storage.Photos;

namespace TyingClass.Web.Pages.BenchLog;

/// <summary>What the entry's page says after a photo did not come through.</summary>
internal static class PhotoNotice
{
    public const string TooBig = "big";
    public const string Stale = "stale";

    public static string? For(string? code) => code switch
    {
        TooBig => $"That photo is over {PhotoReader.MostBytes >> 20} MB. Send a smaller one: most phones can, in the camera’s settings or when sharing.",
        Stale => "The form had gone stale and the photo was not kept. Choose it again.",
        _ => null,
    };
}
