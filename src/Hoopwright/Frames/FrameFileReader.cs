using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Geometry;
using Hoopwright.ModelFiles;
using Hoopwright.Quantities;

namespace Hoopwright.Frames;

/// <summary>Makes a model of a file's fields. What cannot be read is told and left out.</summary>
internal sealed class FrameFileReader
{
    private static readonly ImmutableArray<string> Fields =
        ["nodes", "sections", "materials", "members", "supports", "springs", "loadCases", "combinations", "analysis"];

    private static readonly ImmutableArray<string> MemberFields =
        ["from", "to", "section", "material", "rollDeg", "releaseFrom", "releaseTo", "tensionOnly", "offsets"];

    private static readonly ImmutableArray<string> SectionFields =
        ["tube", "rectangle", "areaM2", "iyM4", "izM4", "jM4", "shearAreaYM2", "shearAreaZM2", "shearFlexible"];

    private static readonly ImmutableArray<string> SectionForms = ["tube", "rectangle", "areaM2"];

    private readonly ModelProblems _problems;
    private readonly ModelNames<int> _nodes;
    private readonly ModelNames<FrameSection> _sections;
    private readonly ModelNames<FrameMaterial> _materials;
    private readonly ModelNames<int> _members;

    internal FrameFileReader(ModelProblems problems)
    {
        _problems = problems;
        _nodes = new("node", problems);
        _sections = new("section", problems);
        _materials = new("material", problems);
        _members = new("member", problems);
    }

    /// <summary>The model, as far as it can be read.</summary>
    internal FrameModel Read(ModelGroup file)
    {
        file.Only(Fields);
        if (TooMany(file, "nodes", FrameCheck.MostNodes) | TooMany(file, "members", 4 * FrameCheck.MostNodes))
            return new();
        var nodes = Nodes(file);
        Sections(file);
        Materials(file);
        var members = Members(file);
        Supports(file, nodes);
        Springs(file, nodes);
        var model = new FrameFileLoads(_problems, _nodes, _members).Read(file);
        model = model with { Nodes = [.. nodes], Members = members, Analysis = FrameFileAnalysis.Read(file, _nodes, _problems) };
        FrameFileLoads.Assumptions(model, _problems);
        return model;
    }

    private bool TooMany(ModelGroup file, string field, int most)
    {
        if (file.Group(field) is not { } group || group.Length <= most)
            return false;
        _problems.Error("model.too-large", field, "The model is larger than this solver takes.", group.Length.ToString(CultureInfo.InvariantCulture), "up to " + most.ToString(CultureInfo.InvariantCulture));
        return true;
    }

    private List<FrameNode> Nodes(ModelGroup file)
    {
        var nodes = new List<FrameNode>();
        foreach (var (id, json, _) in Entries(file, "nodes", "{ \"1\": [0, 0, 0] }"))
        {
            if (FrameFields.Vector(json, ModelGroup.PathOf("nodes", id), _problems) is { } placeM)
            {
                _nodes.Add(id, nodes.Count);
                nodes.Add(new(id, placeM));
            }
            else
            {
                _nodes.AddFaulty(id);
            }
        }
        return nodes;
    }

    private void Sections(ModelGroup file) =>
        Named(file, "sections", "{ \"bow\": { \"tube\": { \"outsideDiameterM\": 0.0483, \"wallM\": 0.0021 } } }", _sections, Section);

    /// <summary>Reads a group of named things; a faulty one is kept by its name, so that naming it is not told as well.</summary>
    private void Named<T>(ModelGroup file, string field, string example, ModelNames<T> into, Func<ModelGroup, T?> read)
        where T : class
    {
        foreach (var entry in Entries(file, field, example))
        {
            if (ModelGroup.Of(entry.Json, entry.Path, _problems) is { } group && read(group) is { } found)
                into.Add(entry.Id, found);
            else
                into.AddFaulty(entry.Id);
        }
    }

    private FrameSection? Section(ModelGroup group)
    {
        group.Only(SectionFields);
        bool shear = group.Flag("shearFlexible") ?? false;
        if (SectionForms.Count(group.Has) > 1)
            return Refuse(group, "A section is given in more than one way.");
        if (group.Group("tube") is { } tube)
        {
            tube.Only(["outsideDiameterM", "wallM"]);
            double? outsideM = tube.NeededNumber("outsideDiameterM", "0.0483"), wallM = tube.NeededNumber("wallM", "0.0021");
            if (outsideM is null || wallM is null)
                return null;
            return outsideM > 0 && wallM > 0 && wallM <= outsideM / 2
                ? FrameSection.Of(new RoundTube(Length.FromMetres(outsideM.Value), Length.FromMetres(wallM.Value)), shear)
                : Refuse(tube, "A tube needs a diameter above 0 and a wall of at most half of it.");
        }
        if (group.Group("rectangle") is { } rectangle)
        {
            rectangle.Only(["widthM", "depthM"]);
            double? widthM = rectangle.NeededNumber("widthM", "0.038"), depthM = rectangle.NeededNumber("depthM", "0.140");
            if (widthM is null || depthM is null)
                return null;
            return widthM > 0 && depthM > 0 ? FrameSection.Rectangle(widthM.Value, depthM.Value, shear) : Refuse(rectangle, "A rectangle needs a width and a depth above 0.");
        }
        return group.Has("tube") || group.Has("rectangle") ? null : Values(group, shear);
    }

    private FrameSection? Values(ModelGroup group, bool shear)
    {
        double? areaM2 = group.NeededNumber("areaM2", "1e-3"), iyM4 = group.NeededNumber("iyM4", "1e-6");
        double? izM4 = group.NeededNumber("izM4", "1e-6"), jM4 = group.NeededNumber("jM4", "2e-6");
        double shearYM2 = group.Number("shearAreaYM2") ?? 0, shearZM2 = group.Number("shearAreaZM2") ?? 0;
        if (areaM2 is null || iyM4 is null || izM4 is null || jM4 is null)
            return null;
        if (!(areaM2 > 0 && iyM4 >= 0 && izM4 >= 0 && jM4 >= 0 && shearYM2 >= 0 && shearZM2 >= 0))
            return Refuse(group, "A section needs an area above 0 and second moments of 0 or more.");
        return shear && shearYM2 == 0 && shearZM2 == 0
            ? Refuse(group, "A section given by values counts shear flexibility by its shear areas, and it has none.")
            : new(areaM2.Value, iyM4.Value, izM4.Value, jM4.Value, shearYM2, shearZM2);
    }

    private FrameSection? Refuse(ModelGroup group, string message)
    {
        _problems.Error("model.section", group.Path, message, null, "a tube, a rectangle, or areaM2, iyM4, izM4, jM4");
        return null;
    }

    private void Materials(ModelGroup file) =>
        Named(file, "materials", "{ \"steel\": { \"youngPa\": 2.0e11, \"shearPa\": 7.7e10 } }", _materials, Material);

    private FrameMaterial? Material(ModelGroup group)
    {
        group.Only(["youngPa", "shearPa", "expansionPerK", "densityKgM3"]);
        double? youngPa = group.NeededNumber("youngPa", "2.0e11"), shearPa = group.NeededNumber("shearPa", "7.7e10");
        double? expansionPerK = group.Number("expansionPerK"), densityKgM3 = group.Number("densityKgM3");
        if (youngPa is null || shearPa is null)
            return null;
        if (youngPa > 0 && shearPa > 0 && !(densityKgM3 < 0))
            return new(youngPa.Value, shearPa.Value, expansionPerK ?? 0, densityKgM3 ?? 0);
        _problems.Error("model.material", group.Path, "A material needs moduli above 0 and a density of 0 or more.", null, "youngPa and shearPa above 0");
        return null;
    }

    private ImmutableArray<FrameMember> Members(ModelGroup file)
    {
        var members = ImmutableArray.CreateBuilder<FrameMember>();
        foreach (var entry in Entries(file, "members", "{ \"a\": { \"from\": \"1\", \"to\": \"2\", \"section\": \"bow\", \"material\": \"steel\" } }"))
        {
            if (ModelGroup.Of(entry.Json, entry.Path, _problems) is { } group && Member(entry.Id, group) is { } member)
            {
                _members.Add(entry.Id, members.Count);
                members.Add(member);
            }
            else
            {
                _members.AddFaulty(entry.Id);
            }
        }
        return members.ToImmutable();
    }

    private FrameMember? Member(string id, ModelGroup group)
    {
        group.Only(MemberFields);
        bool sound = _nodes.Find(group.NeededText("from", "\"1\""), group.PathOf("from"), out int from);
        sound &= _nodes.Find(group.NeededText("to", "\"2\""), group.PathOf("to"), out int to);
        sound &= _sections.Find(group.NeededText("section", "\"bow\""), group.PathOf("section"), out var section);
        sound &= _materials.Find(group.NeededText("material", "\"steel\""), group.PathOf("material"), out var material);
        double rollDeg = group.Number("rollDeg") ?? 0;
        var (releaseFrom, releaseTo) = (FreedomsOf(group, "releaseFrom"), FreedomsOf(group, "releaseTo"));
        bool tensionOnly = group.Flag("tensionOnly") ?? false;
        Vector3 armFromM = default, armToM = default;
        if (group.Group("offsets") is { } offsets)
        {
            offsets.Only(["from", "to"]);
            (armFromM, armToM) = (offsets.Vector("from") ?? default, offsets.Vector("to") ?? default);
        }
        return sound
            ? new()
            {
                Id = id,
                From = from,
                To = to,
                Section = section,
                Material = material,
                RollRad = rollDeg * Math.PI / 180,
                ReleaseFrom = releaseFrom,
                ReleaseTo = releaseTo,
                TensionOnly = tensionOnly,
                OffsetFromM = armFromM,
                OffsetToM = armToM,
            }
            : null;
    }

    private Freedoms FreedomsOf(ModelGroup group, string field) =>
        group.List(field).Aggregate(Freedoms.None, (all, item) => all | (ModelGroup.Word(item.Json, item.Path, FrameWords.Freedoms, _problems) ?? Freedoms.None));

    private void Supports(ModelGroup file, List<FrameNode> nodes)
    {
        if (file.Group("supports") is not { } supports)
            return;
        foreach (var entry in supports.Entries())
        {
            bool known = _nodes.Find(entry.Id, entry.Path, out int node);
            var held = FreedomsOf(supports, entry.Id);
            if (known)
                nodes[node] = nodes[node] with { Held = held };
        }
    }

    private void Springs(ModelGroup file, List<FrameNode> nodes)
    {
        if (file.Group("springs") is not { } springs)
            return;
        foreach (var entry in springs.Entries())
        {
            bool known = _nodes.Find(entry.Id, entry.Path, out int node);
            if (ModelGroup.Of(entry.Json, entry.Path, _problems)?.Six(FrameWords.FreedomNames) is { } stiffness && known)
                nodes[node] = nodes[node] with { Springs = stiffness };
        }
    }

    private static IEnumerable<ModelEntry> Entries(ModelGroup file, string field, string example) =>
        file.NeededGroup(field, example)?.Entries() ?? [];
}
