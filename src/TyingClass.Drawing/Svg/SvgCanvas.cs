using System.Globalization;
using System.Text;
using System.Xml;

namespace TyingClass.Drawing.Svg;

/// <summary>
/// Writes SVG through the framework's XML writer, which escapes whatever a recipe was named. Numbers are invariant; no style attribute is ever written.
/// </summary>
internal sealed class SvgCanvas : IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;

    public SvgCanvas() => _xml = XmlWriter.Create(
        _text, new XmlWriterSettings { OmitXmlDeclaration = true, ConformanceLevel = ConformanceLevel.Document });

    public void Open(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _xml.WriteStartElement(name, Namespace);
        foreach ((string attribute, string value) in attributes)
            _xml.WriteAttributeString(attribute, Clean(value));
    }

    public void Close() => _xml.WriteFullEndElement();

    public void Element(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        _xml.WriteEndElement();
    }

    public void Words(string name, string content, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        _xml.WriteString(Clean(content));
        _xml.WriteFullEndElement();
    }

    public string Finish()
    {
        _xml.WriteEndDocument();
        _xml.Flush();
        return _text.ToString();
    }

    public void Dispose() => _xml.Dispose();

    /// <summary>A coordinate to a hundredth, without a sign on zero.</summary>
    public static string N(double value)
    {
        double rounded = Math.Round(value, 2);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    /// <summary>A coordinate of a mark, to a ten-thousandth: marks answer to the engine's figures.</summary>
    public static string Exact(double value)
    {
        double rounded = Math.Round(value, 4);
        return (rounded == 0 ? 0 : rounded).ToString("0.####", CultureInfo.InvariantCulture);
    }

    /// <summary>XML 1.0 cannot carry control characters or half a surrogate pair at all, so they are shown as a replacement sign.</summary>
    private static string Clean(string value)
    {
        StringBuilder? cleaned = null;
        for (int i = 0; i < value.Length; i++)
        {
            bool pair = i + 1 < value.Length && XmlConvert.IsXmlSurrogatePair(value[i + 1], value[i]);
            if (pair)
            {
                cleaned?.Append(value, i, 2);
                i++;
            }
            else if (XmlConvert.IsXmlChar(value[i]))
            {
                cleaned?.Append(value[i]);
            }
            else
            {
                cleaned ??= new StringBuilder(value, 0, i, value.Length);
                cleaned.Append('\uFFFD');
            }
        }

        return cleaned?.ToString() ?? value;
    }
}
