using System.Net;
using System.Net.Http.Headers;
using System.Text;
using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using TyingClass.Web.Exchange;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class FilesTests : IDisposable
{
    private const string Import = "form[action*='Import' i]";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Register_AsCsv_HasARowForEachPersonAndExerciseAndDefusesFormulas()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await Answers.PassFirstAsync(await _room.NewStudentAsync("=1+1"));

        byte[] csv =
            await instructor.Client.GetByteArrayAsync(new Uri("/class/files?handler=register", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Contains("'=1+1", Encoding.UTF8.GetString(csv), StringComparison.Ordinal);
        CsvRow[] rows = [.. CsvText.Read(csv).Rows];
        Assert.Equal(RegisterCsv.Heads, rows[0].Fields);
        CsvRow passed = rows.Single(r => r[4] == "first-01");
        Assert.Equal(("=1+1", "passed", "1", "2026-01-14 19:30"), (passed[0], passed[6], passed[7], passed[9]));
    }

    [Fact]
    public async Task Class_OutOfOneServerIntoAnother_BringsItsWorkAlong()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await Answers.PassFirstAsync(await _room.NewStudentAsync("Wren"));
        byte[] json = await instructor.Client.GetByteArrayAsync(new Uri("/class/files?handler=class", UriKind.Relative), TestContext.Current.CancellationToken);
        using ClassRoom other = new();
        Browser plover = await other.NewInstructorAsync();

        Sheet slips = await UploadAsync(plover, json);

        Assert.Equal(["Wren"], slips.All(".slip-name").Select(s => s.TextContent));
        Assert.Equal(2, other.Store.Classes.All().Length);
        Assert.True(other.Store.Attempts.StandingOf(other.Store.Accounts.FindByName("Wren")!.Id, "first-01").Passed);
    }

    [Fact]
    public async Task Import_OfSomethingElse_SaysWhereItGoesWrong()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet told = await UploadAsync(instructor, Encoding.UTF8.GetBytes("{\n  \"format\": \"one\"\n}"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("Line 2, at $.format", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Single(_room.Store.Classes.All());
    }

    // The framework's own bound for a file in a form is 128 MB: a large class is larger.
    [Fact]
    public async Task Import_LargerThanTheFrameworkWouldTake_IsRead()
    {
        Browser instructor = await _room.NewInstructorAsync();
        string head = "{\n  \"format\": \"one\",\n  \"much\": [0", tail = "]\n}";
        byte[] json = Encoding.UTF8.GetBytes(string.Concat(head, new StringBuilder().Insert(0, ",\n0", 45 << 20), tail));
        Sheet told = await UploadAsync(instructor, json);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("Line 2, at $.format", told.Text("[role=alert]"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_FromThePage_RestoresElsewhere()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await Answers.PassFirstAsync(await _room.NewStudentAsync("Wren"));
        Sheet files = await instructor.OpenAsync("/class/backup");
        Assert.StartsWith("/class/files", files.Address, StringComparison.Ordinal);

        using FormUrlEncodedContent form = new(Browser.FieldsOf(files.Form("#backup")));
        using HttpResponseMessage response =
            await instructor.Client.PostAsync(new Uri("/class/files?handler=backup", UriKind.Relative), form, TestContext.Current.CancellationToken);

        Assert.Equal("application/zip", response.Content.Headers.ContentType!.MediaType);
        DirectoryInfo folder = Directory.CreateTempSubdirectory("tying-class-restore-");
        try
        {
            string zip = Path.Combine(folder.FullName, "backup.zip");
            await File.WriteAllBytesAsync(zip, await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken),
                TestContext.Current.CancellationToken);
            DataFolder data = DataFolder.At(Path.Combine(folder.FullName, "data"));
            Restoring.Restore(data, zip, _room.Clock.GetUtcNow());
            using ClassStore store = new(data, _room.Clock);
            Assert.True(store.Attempts.StandingOf(store.Accounts.FindByName("Wren")!.Id, "first-01").Passed);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Backup_BySomeoneWhoDidNotSetTheServerUp_IsRefused()
    {
        using TwoClasses two = await TwoClasses.OpenAsync();
        Browser plover = await two.AsAsync("Plover");
        Sheet files = await plover.OpenAsync("/class/files");
        Assert.False(files.Has("#backup button"));
        using FormUrlEncodedContent form = new(Browser.FieldsOf(files.Form("#backup")));
        using HttpResponseMessage response =
            await plover.Client.PostAsync(new Uri("/class/files?handler=backup", UriKind.Relative), form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
    }

    public void Dispose() => _room.Dispose();

    private static async Task<Sheet> UploadAsync(Browser browser, byte[] json)
    {
        Sheet files = await browser.OpenAsync("/class/files");
        using MultipartFormDataContent content = [];
        foreach ((string name, string value) in Browser.FieldsOf(files.Form(Import)).Where(f => f.Key != "file")) content.Add(new StringContent(value), name);
        ByteArrayContent file = new(json);
        file.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        content.Add(file, "file", "class.json");
        using HttpResponseMessage response =
            await browser.Client.PostAsync(new Uri("/class/files?handler=import", UriKind.Relative), content, TestContext.Current.CancellationToken);
        if (response.StatusCode is HttpStatusCode.Redirect or HttpStatusCode.SeeOther) return await browser.OpenAsync(response.Headers.Location!.ToString());
        string html = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        return new Sheet(browser, "/class/files", response, html,
            await new AngleSharp.Html.Parser.HtmlParser().ParseDocumentAsync(html, TestContext.Current.CancellationToken));
    }
}
