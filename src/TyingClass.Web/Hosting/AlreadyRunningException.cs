namespace TyingClass.Web.Hosting;

/// <summary>The data folder is in use by a TyingClass that said where it is.</summary>
public sealed class AlreadyRunningException(string address, Exception cause) : Exception($"{cause?.Message} It is open at {address}", cause)
{
    public string Address => address;
}
