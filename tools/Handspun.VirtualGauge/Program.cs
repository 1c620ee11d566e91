Console.WriteLine("Handspun");
