using Microsoft.AspNetCore.Authorization;
using Microsoft.OpenApi;

namespace Hoopwright.Server.Api;

/// <summary>The OpenAPI document, made from the endpoints.</summary>
internal static class ApiDescription
{
    public static void AddApiDescription(this IServiceCollection services) => services.AddOpenApi("v1", openApi =>
    {
        openApi.AddDocumentTransformer((document, _, _) =>
        {
            document.Info = new OpenApiInfo
            {
                Title = "Hoopwright: shared plans",
                Version = "1",
                Description = "Shares a plan and its site book between devices. Which plan a request is about follows from the token of its link. Limits and refusals: docs/sharing.md.",
            };
            document.Servers = [];
            document.Components ??= new OpenApiComponents();
            document.Components.SecuritySchemes = new Dictionary<string, IOpenApiSecurityScheme>
            {
                [LinkAuthentication.SchemeName] = new OpenApiSecurityScheme { Type = SecuritySchemeType.Http, Scheme = "bearer", Description = "The secret part of a link, or the keeper key." },
            };
            return Task.CompletedTask;
        });
        openApi.AddOperationTransformer((operation, context, _) =>
        {
            if (context.Description.ActionDescriptor.EndpointMetadata.OfType<AuthorizationPolicy>().Any())
                operation.Security = [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(LinkAuthentication.SchemeName, context.Document)] = [] }];
            return Task.CompletedTask;
        });
    });
}
