using Hoopwright.Packets;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

public sealed class PacketNamesTests
{
    [Fact]
    public void The_name_of_every_file_tells_the_kind_that_was_asked_for()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(rest: "\"site\": { \"latitude\": \"43°\", \"longitude\": \"-78°\", \"frontFaces\": \"120°\" }"));
        foreach (PacketForm form in Enum.GetValues<PacketForm>())
        {
            PacketFile[] files = [.. PacketWriter.Write(planned, Paper.Letter, new DateOnly(2026, 3, 1), choice: new PacketChoice { Only = [form], Crew = "es" })];
            Assert.True(files.Length > 1);
            Assert.All(files, file => Assert.Equal(file.Name == PacketIndex.Name ? null : form, PacketNames.FormOf(file.Name)));
        }
    }

    [Theory]
    [InlineData("drawings/sketch.png")]
    [InlineData("notes.pdf")]
    [InlineData("drawings/old/01-set-out.svg")]
    [InlineData("tables/prices.xlsx")]
    [InlineData("PACKET.PDF")]
    [InlineData("packet.pdf\n")]
    public void Other_files_are_of_no_kind(string path) => Assert.Null(PacketNames.FormOf(path));
}
