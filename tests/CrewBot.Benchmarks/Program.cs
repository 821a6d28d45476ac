Console.WriteLine("Bench");
