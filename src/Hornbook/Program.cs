using Hornbook.Commands;

return await CommandLine.RunAsync(args);
