using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Hoopwright.Sharing;

/// <summary>How what goes over the wire is read and written: camel case, words for choices, nothing for what is not there. Needs no reflection.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, MaxDepth = SharingLimits.Depth,
    RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true, AllowDuplicateProperties = false)]
[JsonSerializable(typeof(NewShare))]
[JsonSerializable(typeof(NewShareAnswer))]
[JsonSerializable(typeof(PlanState))]
[JsonSerializable(typeof(EntryPush))]
[JsonSerializable(typeof(EntryPushAnswer))]
[JsonSerializable(typeof(DocumentPush))]
[JsonSerializable(typeof(DocumentPushAnswer))]
[JsonSerializable(typeof(PlanChange))]
[JsonSerializable(typeof(NewLink))]
[JsonSerializable(typeof(NewLinkAnswer))]
[JsonSerializable(typeof(ImmutableArray<SharedLink>))]
[JsonSerializable(typeof(AuditPage))]
[JsonSerializable(typeof(ServerHealth))]
[JsonSerializable(typeof(SharingProblem))]
public sealed partial class SharingJson : JsonSerializerContext;
