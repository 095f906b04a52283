update revision set canonical = replace(canonical, 'Probe', 'Prone')
