Console.WriteLine("Hornbook");
