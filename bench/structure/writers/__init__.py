"""Writers of test manuscripts. Nothing here imports the program under test; a test holds that."""
