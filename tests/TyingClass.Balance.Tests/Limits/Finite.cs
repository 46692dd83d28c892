using System.Collections;
using System.Reflection;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

/// <summary>Walks everything a report says and fails on the first number that is none.</summary>
internal static class Finite
{
    public static void AssertAll(object? told, string path = "report")
    {
        switch (told)
        {
            case null or string or Enum:
                return;
            case double number:
                Assert.True(double.IsFinite(number), $"{path} is {number}");
                return;
            case IEnumerable many:
                int i = 0;
                foreach (object? one in many) AssertAll(one, $"{path}[{i++}]");
                return;
        }

        if (told.GetType().IsPrimitive) return;
        foreach (PropertyInfo property in told.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0))
        {
            // A vector's own derived unit is not part of the report.
            AssertAll(property.GetValue(told), $"{path}.{property.Name}");
        }
    }
}
