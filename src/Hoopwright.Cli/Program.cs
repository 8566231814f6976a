using System.Text;
using Hoopwright.Cli;
using Hoopwright.Cli.Verbs;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return CommandTree.Run(args, Terminal.OfProcess());
