using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Pages.Register;

public sealed class IndexModel(ClassRegister register) : PageModel
{
    public RegisterView Register { get; private set; } = null!;

    public void OnGet() => Register = register.All();
}
