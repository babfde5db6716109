"""The heat picture: from a request and its settings to the fused zone in the joint."""
