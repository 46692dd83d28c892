using Microsoft.Extensions.Configuration;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class OwnEnvironmentTests
{
    [Fact]
    public void Only_AVariableOfAnotherProgram_IsNoOption()
    {
        Environment.SetEnvironmentVariable("heron-of-another", "/elsewhere");
        Environment.SetEnvironmentVariable("TYINGCLASS_heron-of-ours", "/here");
        ConfigurationManager configuration = new();
        configuration.AddEnvironmentVariables();
        configuration.AddCommandLine(["--told=yes"]);
        Assert.Equal("/elsewhere", configuration["heron-of-another"]);

        OwnEnvironment.Only(configuration);

        Assert.Null(configuration["heron-of-another"]);
        Assert.Equal("/here", configuration["heron-of-ours"]);
        Assert.Equal("yes", configuration["told"]);
    }
}
