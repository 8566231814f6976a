using System.Text;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;
using Ical.Net.CalendarComponents;

namespace Hoopwright.Sheets.Tests.Ics;

/// <summary>Calendar files as Ical.Net 5.2.4 reads them.</summary>
public sealed class CrewIcsTests
{
    private static readonly DateTimeOffset Stamp = new(2026, 4, 1, 6, 30, 0, TimeSpan.FromHours(-4));

    private static readonly Lazy<PlannedTunnel> Example = new(() => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes("gothic-26ft")), depth: WorkDepth.Orders));

    [Fact]
    public void Another_reader_finds_an_event_for_each_step_and_day()
    {
        CrewCalendar calendar = From(new(2026, 4, 13));
        List<CalendarEvent> events = Read(Write(calendar));
        StepShift[] shifts = [.. calendar.Days.SelectMany(day => day.Shifts)];
        Assert.Equal(shifts.Length, events.Count);
        Assert.Equal(shifts.Length, events.Select(each => each.Uid).Distinct().Count());
        foreach ((StepShift shift, CalendarEvent found) in shifts.Zip(events))
        {
            Assert.Equal((shift.From, shift.To), (found.DtStart!.Value, found.DtEnd!.Value));
            Assert.True(found.DtStart.IsFloating && found.DtStamp!.AsUtc == Stamp.UtcDateTime);
            Assert.StartsWith(calendar[shift.StepId].Step.Title.ToString(), found.Summary, StringComparison.Ordinal);
            Assert.All(calendar[shift.StepId].Step.Cautions, caution => Assert.Contains(caution.Text, found.Description, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_evening_before_each_day_its_first_event_reminds()
    {
        CrewCalendar calendar = From(new(2026, 4, 13));
        List<CalendarEvent> ringing = [.. Read(Write(calendar)).Where(each => each.Alarms.Count > 0)];
        Assert.Equal(calendar.Days.Select(day => day.Shifts[0].From), ringing.Select(each => each.DtStart!.Value));
        Assert.All(ringing, each => Assert.Equal(each.DtStart!.Value.Date.AddHours(-6), each.DtStart.Value + Assert.Single(each.Alarms).Trigger!.Duration!.Value.ToTimeSpanUnspecified()));
    }

    [Fact]
    public void A_changed_calendar_read_in_again_moves_events_and_makes_no_doubles()
    {
        CrewCalendar before = From(new(2026, 4, 13)), after = From(new(2026, 4, 15), people: 2), shorter = From(new(2026, 4, 15), people: 6);
        byte[] first = Write(before), second = Write(after, KeptEvents.Read(first)), third = Write(shorter, KeptEvents.Read(second));
        Dictionary<string, CalendarEvent> phone = [];
        Import(phone, first);
        Import(phone, second);
        Assert.Equal(after.Days.SelectMany(day => day.Shifts).Select(shift => (shift.From, shift.To)).Order(), Standing(phone));
        Assert.Equal([0, 1], phone.Values.Where(each => each.Status != "CANCELLED").Select(each => each.Sequence - Read(first)[0].Sequence).Distinct().Order());
        Import(phone, third);
        Assert.Equal(shorter.Days.SelectMany(day => day.Shifts).Select(shift => (shift.From, shift.To)).Order(), Standing(phone));
        // Fewer people took some steps more days: those days are called off.
        Assert.Contains(phone.Values, each => each.Status == "CANCELLED");
        // What did not change keeps its revision.
        Assert.Equal(Encoding.UTF8.GetString(third), Encoding.UTF8.GetString(Write(shorter, KeptEvents.Read(third))));

        static IEnumerable<(DateTime, DateTime)> Standing(Dictionary<string, CalendarEvent> phone) =>
            phone.Values.Where(each => each.Status != "CANCELLED").Select(each => (each.DtStart!.Value, each.DtEnd!.Value)).Order();
    }

    // As a calendar does (RFC 5546, 2.1.5): by UID, the higher revision wins.
    private static void Import(Dictionary<string, CalendarEvent> phone, byte[] file)
    {
        foreach (CalendarEvent each in Read(file))
        {
            if (!phone.TryGetValue(each.Uid!, out CalendarEvent? there) || each.Sequence >= there.Sequence) phone[each.Uid!] = each;
        }
    }

    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_as_the_standard_says_and_texts_come_back_whole()
    {
        CrewCalendar calendar = From(new(2026, 4, 13));
        string odd = "Cut, saw; drill \\ and \"mark\": " + string.Concat(Enumerable.Repeat("ñandú 梁 🪚 ", 12)) + "\nnext line";
        PlannedStep step = calendar.Steps[0] with { Step = calendar.Steps[0].Step with { Title = new Phrase("{0}", [odd]) } };
        byte[] file = Write(calendar with { Steps = [step, .. calendar.Steps.Skip(1)] });
        string text = Encoding.UTF8.GetString(file);
        Assert.DoesNotContain("\n", text.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Contains(Read(file), each => each.Summary == odd);
    }

    [Fact]
    public void Every_title_and_tool_is_known_in_Spanish()
    {
        CrewWords words = CrewWords.Of("es");
        foreach (string example in SamplePlans.GoodExamples)
        {
            PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)), depth: WorkDepth.Orders);
            BuildStep[] steps = [.. planned.Steps!.Steps, .. planned.RecoverSteps!.Steps];
            Assert.Empty(steps.Select(step => step.Title.Pattern).Concat(steps.SelectMany(step => step.Tools).Select(tool => tool.Name)).Where(text => !words.Knows(text)).Distinct().Order());
        }
        Assert.Contains("SUMMARY:Levantar los arcos", Encoding.UTF8.GetString(Write(From(new(2026, 4, 13)), language: "es")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_made_later_goes_before_one_that_is_not_at_hand()
    {
        CrewCalendar calendar = From(new(2026, 4, 13));
        byte[] later = CrewIcs.Write(calendar, "Long tunnel, ñ", CrewWords.English, UnitSystem.UsCustomary, Stamp.AddMinutes(5), KeptEvents.None);
        Assert.Equal(5, Read(later)[0].Sequence - Read(Write(calendar))[0].Sequence);
    }

    [Fact]
    public void What_is_done_is_not_called_off()
    {
        byte[] first = Write(From(new(2026, 4, 13)));
        string done = From(new(2026, 4, 13)).Steps[0].Step.Id;
        CrewCalendar later = From(new(2026, 4, 20), book: new SiteBookEntry { Id = "1", Kind = SiteBookKind.Done, Of = done, Value = "2026-04-13" });
        Assert.Equal([done], later.Done);
        Assert.DoesNotContain(Read(Write(later, KeptEvents.Read(first))), each => each.Uid!.Contains(done, StringComparison.Ordinal));
    }

    private static CrewCalendar From(DateOnly start, int people = 4, SiteBookEntry? book = null)
    {
        PlannedTunnel planned = Example.Value;
        Plan plan = planned.Plan with { Build = new Build { Start = start }, Crew = planned.Plan.Crew with { People = people }, SiteBook = book is null ? [] : [book] };
        CrewCalendarOutcome outcome = CrewCalendarPlanner.Plan(planned.Tunnel! with { Plan = plan }, planned.Steps! with { Steps = [.. planned.Steps!.Steps.Select(step => step with { LeastPeople = Math.Min(2, step.LeastPeople), InOneGo = false })] });
        Assert.True(outcome.Calendar is not null, string.Join('\n', outcome.Diagnostics));
        return outcome.Calendar;
    }

    private static byte[] Write(CrewCalendar calendar, KeptEvents? before = null, string language = "en") =>
        CrewIcs.Write(calendar, "Long tunnel, ñ", CrewWords.Of(language), UnitSystem.UsCustomary, Stamp, before ?? KeptEvents.None);

    private static List<CalendarEvent> Read(byte[] file) => [.. Ical.Net.Calendar.Load(Encoding.UTF8.GetString(file))!.Events];
}
