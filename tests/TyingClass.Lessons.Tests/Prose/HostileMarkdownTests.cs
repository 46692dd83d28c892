using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using CsCheck;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Prose;

/// <summary>What an author, or someone who got at an author's file, might try.</summary>
public sealed class HostileMarkdownTests
{
    private static readonly string[] HarmlessTags =
        ["P", "A", "EM", "STRONG", "CODE", "PRE", "UL", "OL", "LI", "BLOCKQUOTE", "TABLE", "THEAD", "TBODY", "TR", "TH", "TD", "H2", "H3", "HR", "BR", "IMG",
        "SUP", "DIV"];

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JaVaScRiPt:alert(1))")]
    [InlineData("[x](&#106;avascript:alert(1))")]
    [InlineData("[x](java&#9;script:alert(1))")]
    [InlineData("[x](<  javascript:alert(1)>)")]
    [InlineData("[x](data:text/html;base64,PHNjcmlwdD4=)")]
    [InlineData("[x](vbscript:msgbox(1))")]
    [InlineData("[x](//evil.example/x)")]
    [InlineData("[x](\\\\\\\\evil.example\\x)")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("![x](javascript:alert(1))")]
    [InlineData("![x](data:image/svg+xml;base64,AAAA)")]
    [InlineData("[x][r]\n\n[r]: javascript:alert(1)")]
    [InlineData("[x](file:///etc/passwd)")]
    public void Read_AddressThatCouldHarm_IsAnErrorWithItsLine(string markdown)
    {
        LessonResult result = Repo.Read(markdown);

        AuthorError error = Assert.Single(result.Errors);
        Assert.Equal(8, error.Line);
        Assert.Contains("address", error.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("a <b onclick=alert(1)>b</b>")]
    [InlineData("<iframe src=\"https://evil.example\"></iframe>")]
    [InlineData("<a href=\"javascript:alert(1)\">x</a>")]
    [InlineData("<svg><script>alert(1)</script></svg>")]
    [InlineData("<style>*{display:none}</style>")]
    [InlineData("<!-- <script> -->")]
    [InlineData("`<script>` and ```x <img onerror=1>```")]
    [InlineData("**a** {onclick=alert(1) .big #top}")]
    [InlineData("## Title {onclick=alert(1)}")]
    [InlineData("[a](https://a.example \"t\\\" onmouseover=alert(1) x=\\\"\")")]
    [InlineData("![a\" onerror=\"alert(1)](https://a.example/x.png)")]
    [InlineData("| a |\n| - |\n| <img src=x onerror=alert(1)> |")]
    [InlineData("text[^n]\n\n[^n]: <script>alert(1)</script>")]
    [InlineData("```<script>\nx\n```")]
    [InlineData("<form action=https://evil.example><input name=password></form>")]
    [InlineData("<math><mtext></form><form><mglyph><style></math><img src onerror=alert(1)>")]
    public void Read_Markup_BecomesHarmlessText(string markdown)
    {
        LessonResult result = Repo.Read(markdown);

        Assert.Empty(result.Errors);
        foreach (ProseBlock prose in result.Lesson!.Blocks.OfType<ProseBlock>())
        {
            foreach (IElement element in new HtmlParser().ParseDocument(prose.Html).Body!.QuerySelectorAll("*"))
            {
                Assert.Contains(element.TagName, HarmlessTags);
                Assert.DoesNotContain(element.Attributes,
                    a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || a.Name is "style" or "action" or "srcdoc");
            }
        }
    }

    [Fact]
    public void Read_TablesFootnotesAndHeadings_ComeThrough()
    {
        LessonResult result = Repo.Read("## Why it hangs\n\nText[^a] and [more](#why-it-hangs).\n\n| a | b |\n| --- | ---: |\n| 1 | 2 |\n\n[^a]: A note.\n");

        Assert.Empty(result.Errors);
        IDocument page = new HtmlParser().ParseDocument(((ProseBlock)result.Lesson!.Blocks.Single()).Html);
        Assert.Equal("why-it-hangs", page.QuerySelector("h2")!.Id);
        Assert.Equal("#why-it-hangs", page.QuerySelector("p > a:not(.footnote-ref)")!.GetAttribute("href"));
        Assert.Equal("2", page.QuerySelector("td:nth-child(2)")!.TextContent);
        string note = page.QuerySelector("a.footnote-ref")!.GetAttribute("href")!;
        Assert.Contains("A note.", page.GetElementById(note[1..])!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LinkToALessonFile_LeadsToItsPage()
    {
        LessonResult result = Repo.Read("[next](02-keel-height.md#loop)");

        Assert.Contains("href=\"/lessons/keel-height#loop\"", ((ProseBlock)result.Lesson!.Blocks.Single()).Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FenceNeverClosed_IsAnErrorWithItsLine()
    {
        LessonResult result = Repo.Read("Text\n\n```fly side\nfile: recipes/reed-darter.fly.yaml\n");

        Assert.Contains(result.Errors, e => e.Line == 10 && e.Text.StartsWith("This fence is never closed", StringComparison.Ordinal));
        Assert.Null(result.Lesson);
    }

    [Fact]
    public void Read_FenceInsideAList_IsAnErrorWithItsLine()
    {
        LessonResult result = Repo.Read("* Item\n\n  ```fly side\n  file: recipes/reed-darter.fly.yaml\n  ```\n");

        Assert.Contains(result.Errors, e => e.Line == 10 && e.Text.Contains("must stand by itself", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_ImageWithoutText_IsAnError() =>
        Assert.Contains("no text", Assert.Single(Repo.Read("![](https://a.example/x.png)").Errors).Text, StringComparison.Ordinal);

    [Fact]
    public void Read_HeadingOfTheFirstRank_IsAnError() =>
        Assert.Contains("begin this one with ##", Assert.Single(Repo.Read("# Title").Errors).Text, StringComparison.Ordinal);

    [Fact]
    public void Read_AnyText_NeverThrows()
    {
        string[] pieces =
        [
            "```exercise\n", "```fly side\n", "```\n", "---\n", "id: a\n", "kind: repair\n", "- ", "{", "}", "[", "]", ": ", "\n", "&a ", "*a ", "\t", "|",
            "'", "\"", "!", "<", ">", "recipe: |\n  hook", "é", "\0", "[^1]", "#",
        ];

        Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).List[0, 25].Select(string.Concat)
            .Sample(text => Assert.NotNull(LessonReader.Read("01-a.md", text, _ => null)), iter: 2000);
    }
}
