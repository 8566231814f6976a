namespace Hoopwright.Cli;

/// <summary>What is printed: tables for people, one JSON document, or CSV for spreadsheets.</summary>
internal enum OutputForm
{
    Text,
    Json,
    Csv,
}
