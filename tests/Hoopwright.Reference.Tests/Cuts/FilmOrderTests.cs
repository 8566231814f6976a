using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.Cuts.Film;
using Hoopwright.Reference.Tests.Cutting;

namespace Hoopwright.Reference.Tests.Cuts;

/// <summary>
/// Orders of film with two-stage cuts: straight across the roll, then lengthwise, pieces turned at will. Made for this purpose;
/// optima worked out with CP-SAT (OR-Tools 9.15), most of them by a second model as well.
/// </summary>
public sealed class FilmOrderTests
{
    [Fact(SkipExceptions = [typeof(DirectoryNotFoundException)])]
    public void Every_order_of_film_costs_what_the_outside_solver_proved()
    {
        int orders = 0;
        foreach (var (file, row) in CuttingData.Optima(Path.Combine("film2stage", "orders")))
        {
            (ImmutableArray<FilmSize> sizes, ImmutableArray<SearchOffer> offers) = Read(file);
            (ImmutableArray<RollChoice> rolls, ImmutableArray<int> leftOut) = FilmSearch.Best(sizes, offers, slit: true);

            Assert.All(leftOut, count => Assert.Equal(0, count));
            Assert.Equal(decimal.Parse(row["optimum_cents"], CultureInfo.InvariantCulture), rolls.Sum(roll => offers[roll.Offer].Cost));
            Assert.All(rolls, roll => Assert.All(roll.Levels, level => Assert.True(level.Sum(size => size.Across) <= offers[roll.Offer].Width)));
            Assert.All(rolls, roll => Assert.True(roll.Levels.Sum(level => level.Max(size => size.Along)) <= offers[roll.Offer].Length));
            Assert.Equal(
                sizes.SelectMany(size => Enumerable.Repeat(Sides(size), size.Count)).Order(),
                rolls.SelectMany(roll => roll.Levels).SelectMany(level => level).Select(Sides).Order());
            orders++;
        }
        Assert.Equal(11, orders);

        static (long, long) Sides(FilmSize size) => (Math.Min(size.Across, size.Along), Math.Max(size.Across, size.Along));
    }

    private static (ImmutableArray<FilmSize> Sizes, ImmutableArray<SearchOffer> Offers) Read(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        return (
        [
            .. document.RootElement.GetProperty("pieces").EnumerateArray().Select((piece, order) => new FilmSize(
                piece.GetProperty("across").GetInt64(), piece.GetProperty("along").GetInt64(), order, piece.GetProperty("count").GetInt32(), piece.GetProperty("rotate").GetBoolean())),
        ],
        [
            .. document.RootElement.GetProperty("rolls").EnumerateArray().Select(roll => new SearchOffer(
                roll.GetProperty("width").GetInt64(), roll.GetProperty("length").GetInt64(), roll.GetProperty("price").GetDecimal(), OnHand: false,
                roll.GetProperty("supply").ValueKind == JsonValueKind.Null ? null : roll.GetProperty("supply").GetInt32())),
        ]);
    }
}
