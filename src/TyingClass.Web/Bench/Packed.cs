using System.Buffers.Text;
using System.Diagnostics.CodeAnalysis;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace TyingClass.Web.Bench;

/// <summary>Text small enough to travel in an address: Brotli (RFC 7932), then base64url (RFC 4648, section 5).</summary>
public static class Packed
{
    private const int CheckBytes = 3;

    public static string Pack(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        byte[] plain = Encoding.UTF8.GetBytes(text);
        using MemoryStream packed = new();
        packed.Write(Check(plain));
        using (BrotliStream brotli = new(packed, CompressionLevel.Optimal, leaveOpen: true)) brotli.Write(plain);
        return Base64Url.EncodeToString(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }

    /// <summary>False for what was never packed here, was cut short on the way, or would unpack to more than <paramref name="mostBytes"/>.</summary>
    public static bool TryUnpack(string? packed, int mostBytes, [NotNullWhen(true)] out string? text)
    {
        text = null;
        if (string.IsNullOrEmpty(packed) || !Base64Url.IsValid(packed)) return false;
        try
        {
            byte[] all = Base64Url.DecodeFromChars(packed);
            if (all.Length <= CheckBytes) return false;
            using MemoryStream bytes = new(all, CheckBytes, all.Length - CheckBytes);
            using BrotliStream brotli = new(bytes, CompressionMode.Decompress);
            byte[] room = new byte[mostBytes + 1];
            int length = brotli.ReadAtLeast(room, room.Length, throwOnEndOfStream: false);
            // A stream that was cut short ends without complaint; the check tells.
            if (length > mostBytes || !Check(room.AsSpan(0, length)).SequenceEqual(all.AsSpan(0, CheckBytes))) return false;
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(room, 0, length);
            return true;
        }
        catch (Exception e) when (e is InvalidDataException or InvalidOperationException or FormatException or ArgumentException)
        {
            return false;
        }
    }

    private static ReadOnlySpan<byte> Check(ReadOnlySpan<byte> plain) => SHA256.HashData(plain).AsSpan(0, CheckBytes);
}
