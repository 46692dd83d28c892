using System.Collections.Immutable;
using System.Text;
using CsCheck;
using TyingClass.Storage.People;
using TyingClass.Web.Exchange;
using Xunit;

namespace TyingClass.Web.Tests.Exchange;

public sealed class CsvTests
{
    [Theory]
    [InlineData("=HYPERLINK(\"http://evil.example\")")]
    [InlineData("+1+2")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("'=1")]
    public void Write_NameThatIsAFormula_CannotRunAndReadsBack(string name)
    {
        byte[] file = CsvText.Write([[name, "student"]]);

        string first = Encoding.UTF8.GetString(file).TrimStart('\uFEFF').TrimStart('"');
        Assert.StartsWith("'", first, StringComparison.Ordinal);
        Assert.Equal(name.Trim('\t'), CsvText.Read(file).Rows[0][0].Trim('\t'));
    }

    [Fact]
    public void Write_Anything_BeginsWithTheMarkSpreadsheetsKnowUtf8By() =>
        Assert.Equal(Encoding.UTF8.GetPreamble(), CsvText.Write([["Wren", "Ærøskøbing"]])[..3]);

    [Fact]
    public void WriteThenRead_AnyText_IsTheSame()
    {
        Gen<string> sign = Gen.OneOf(new[] { "a", "é", "🐟", "\"", ",", ";", "'", "=", "+", "-", "@", " ", "0" }.Select(Gen.Const).ToArray<IGen<string>>());
        Gen<string> field = sign.Array[0, 12].Select(string.Concat).Where(f => f == f.Trim());
        field.Array[3].Array[1, 6].Where(rows => rows.All(r => r.Any(f => f.Length > 0))).Sample(rows =>
        {
            (ImmutableArray<CsvRow> read, string? problem) = CsvText.Read(CsvText.Write(rows.Select(r => (IEnumerable<string>)r).Prepend(["a", "b", "c"])));
            return problem is null && read.Skip(1).Select(r => string.Join('\0', r.Fields)).SequenceEqual(rows.Select(r => string.Join('\0', r)));
        });
    }

    [Theory]
    [InlineData("name,role\nWren,student\nOtter,mentor\n")]
    [InlineData("\uFEFFName;Role\r\nWren;\r\nOtter;Mentor\r\n")]
    [InlineData("role\tname\nstudent\tWren\nmentor\tOtter\n")]
    [InlineData("Wren\n\nOtter, mentor\n")]
    public void Roster_HoweverASpreadsheetSavesIt_IsRead(string text)
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes(text));
        Assert.Empty(roster.Problems);
        Assert.Equal([("Wren", Role.Student), ("Otter", Role.Mentor)], roster.All.Select(l => (l.Name, l.Role)));
    }

    [Theory]
    [InlineData("First name,Last name\nWren,Alder\nTeal,\n", "Wren Alder|Teal")]
    [InlineData("Surname;Given Name;Email\nAlder;Wren;w@example.org\n;Teal;\n", "Wren Alder|Teal")]
    [InlineData("FIRST_NAME\tfamily-name\nWren\tAlder\nTeal\tBrook\n", "Wren Alder|Teal Brook")]
    [InlineData("Name,First name\nAlder,Wren\n", "Wren Alder")]
    [InlineData("Full Name\nWren Alder\n", "Wren Alder")]
    [InlineData("Student,Role\nWren Alder,student\n", "Wren Alder")]
    [InlineData("Wren;Alder\nTeal;Brook\n", "Wren Alder|Teal Brook")]
    [InlineData("Wren,Alder,mentor\nTeal,Brook,\n", "Wren Alder|Teal Brook")]
    [InlineData("Wren,w@example.org\nTeal,t@example.org\n", "Wren|Teal")]
    [InlineData("\"Alder, Wren\"\nTeal\n", "Alder, Wren|Teal")]
    public void Roster_UsualHeads_PartsOfANameAreJoined(string text, string expected)
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes(text));
        Assert.Empty(roster.Problems);
        Assert.Equal(expected.Split('|'), roster.All.Select(l => l.Name));
    }

    [Fact]
    public void Roster_TwoColumnsWithoutHeads_AreTurnedRoundOnDemand()
    {
        byte[] list = Encoding.UTF8.GetBytes("Alder,Wren\nBrook,Teal\n");
        Assert.True(RosterCsv.Read(list).Heads!.AreGuessed);
        Assert.Equal(["Wren Alder", "Teal Brook"], RosterCsv.Read(list, lastNameFirst: true).All.Select(l => l.Name));
    }

    [Theory]
    [InlineData("plain last first role")]
    [InlineData("headed lastthenfirst unused")]
    public void Pick_Written_ReadsBack(string written) => Assert.Equal(written, RosterPick.Read(written)!.Write());

    [Fact]
    public void Roster_WholeNamesWithAComma_AreTurnedWhereSomebodySaysSo()
    {
        byte[] list = Encoding.UTF8.GetBytes("Name\n\"Alder, Wren\"\nTeal\n");
        Roster asItStands = RosterCsv.Read(list);
        Assert.Equal(("Alder, Wren", "Wren Alder"), asItStands.MayBeTurned);
        RosterPick turned = new RosterPick(true, asItStands.Heads!.Columns).Turned();
        Assert.Equal(["Wren Alder", "Teal"], RosterCsv.Read(list, pick: turned).All.Select(l => l.Name));
    }

    [Fact]
    public void Roster_PickOfAnotherListsColumns_IsNotTaken()
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes("Wren,Alder\n"), pick: RosterPick.Read("plain last first role"));
        Assert.Equal("Wren Alder", Assert.Single(roster.All).Name);
    }

    [Fact]
    public void Roster_TwinsThatLookAlike_AreToldWithTheLineOfTheFirst()
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes("Wren  Alder\n\nwren alder\nRen\u00E9\nRene\u0301\n"));
        Assert.Equal(["Line 3: “wren alder” stands in line 1 already", "Line 5: “Rene\u0301” stands in line 4 already"], roster.Problems.Select(p =>
            p.Split('.')[0]));
        Assert.False(roster.MayBeAdded);
    }

    [Fact]
    public void Roster_SeveralMistakes_NamesTheLineOfEach()
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes($"name,role\nWren,captain\n,student\nTeal,\nteal,\n{new string('x', 61)},\n"));
        Assert.Equal(["Line 2", "Line 3", "Line 5", "Line 6"], roster.Problems.Select(p => p.Split(':')[0]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("name,role\n")]
    public void Roster_WithoutAName_SaysWhatToWrite(string text) =>
        Assert.Contains("one name a line", Assert.Single(RosterCsv.Read(Encoding.UTF8.GetBytes(text)).Problems), StringComparison.OrdinalIgnoreCase);

    [Theory]
    [InlineData("\"Wren,student\nTeal,student\n")]
    [InlineData("name,role\nHeron,\n\"Wren\nTeal\",student\n")]
    [InlineData("Heron\n\"Wren,student")]
    public void Roster_QuoteLeftOpen_AddsNobodyAndSaysSo(string text)
    {
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes(text));
        Assert.Contains("quote", Assert.Single(roster.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Roster_QuoteInsideAName_IsALetterLikeAnother() =>
        Assert.Equal("5\" Wren", Assert.Single(RosterCsv.Read(Encoding.UTF8.GetBytes("5\" Wren\n")).All).Name);

    /// <summary>Braille blank and a zero-width space: a name nobody could see in a list.</summary>
    [Fact]
    public void Roster_NameNobodyCanSee_IsToldBeforeAnybodyIsAdded() =>
        Assert.Equal("Line 2: nothing of this name can be seen. Type it anew.",
            Assert.Single(RosterCsv.Read(Encoding.UTF8.GetBytes("Wren Alder\n\u2800\u200B\n")).Problems));

    [Fact]
    public void Roster_FiveThousandColumns_AreTooManyAndTheLineIsTold() =>
        Assert.StartsWith("Line 2 has 5000 columns; a list of names has 100 at most.",
            Assert.Single(RosterCsv.Read(Encoding.UTF8.GetBytes("Wren Alder\n" + new string(',', 4999) + "\n")).Problems), StringComparison.Ordinal);

    [Fact]
    public void Roster_NotUtf8_IsRefused() =>
        Assert.Contains("not in UTF-8", Assert.Single(RosterCsv.Read(Encoding.Latin1.GetBytes("Café\n")).Problems), StringComparison.Ordinal);
}
