using System.CommandLine;
using System.Globalization;

namespace Hoopwright.Cli;

/// <summary>The option that ends a search by the clock.</summary>
internal static class LimitOption
{
    private const double LongestSeconds = 1e6;

    public static Option<double?> Make()
    {
        var limit = new Option<double?>("--limit") { Description = "The most seconds to search; the best plan by then is given with its bound. Usually the work is bounded, not the time.", HelpName = "SECONDS" };
        limit.Validators.Add(found =>
        {
            if (found.Tokens is not [{ Value: var typed }] || !double.TryParse(typed, CultureInfo.InvariantCulture, out double seconds) || seconds is not (> 0 and <= LongestSeconds)) found.AddError("--limit takes seconds above 0, such as 10.");
        });
        return limit;
    }
}
