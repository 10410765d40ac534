"""What is asked about slips that authors made, about controls that only look like slips, and about clean novels."""
