using Microsoft.Extensions.Configuration.EnvironmentVariables;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Options out of the environment: those that begin with TYINGCLASS_, so that what another program left there under a common word (DATA, PROXY, LESSONS) is
/// not taken for an option.
/// </summary>
internal static class OwnEnvironment
{
    public const string Prefix = "TYINGCLASS_";

    /// <summary>TYINGCLASS_DATA is then read as the option data. The framework's own, with ASPNETCORE_ and DOTNET_, stay.</summary>
    public static void Only(IConfigurationBuilder configuration)
    {
        for (int i = 0; i < configuration.Sources.Count; i++)
        {
            if (configuration.Sources[i] is EnvironmentVariablesConfigurationSource { Prefix: null or "" })
                configuration.Sources[i] = new EnvironmentVariablesConfigurationSource { Prefix = Prefix };
        }
    }
}
