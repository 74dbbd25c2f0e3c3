package drawwell.ui.look

import androidx.compose.ui.graphics.Color

/** The same colours for eyes that ask the system for more contrast: nothing faint, and every raised thing edged. */
object HigherContrast {
    /** The linen bleached, the water deep. */
    val Light = Colours(
        night = false,
        outlined = true,
        page = Tone(Color(0xFFFFFAF0), Color(0xFF081C28), Color(0xFF3D3020), Color(0xFF5E4C38)),
        sheet = Tone(Color(0xFFFFFFFF), Color(0xFF081C28), Color(0xFF3F3222), Color(0xFF614F3B)),
        foot = Tone(Color(0xFFF3E8D6), Color(0xFF081C28), Color(0xFF382C1D), Color(0xFF54432F)),
        main = Tone(Color(0xFF0E2A3A), Color(0xFFFFFDF8), Color(0xFFE4EEF0), Color(0xFFC9DADF)),
        plain = Tone(Color(0xFFF3E6D0), Color(0xFF081C28), Color(0xFF372A1B), Color(0xFF524130)),
        chosen = Tone(Color(0xFF143D52), Color(0xFFFFFDF8), Color(0xFFE9F2F3), Color(0xFFCFDFE4)),
        running = Tone(Color(0xFFFFFAF0), Color(0xFF6E2A08), Color(0xFF6E2A08), Color(0xFF843A10)),
        now = Tone(Color(0xFF6F2D0A), Color(0xFFFFFBF4), Color(0xFFFDEEDD), Color(0xFFF8DBBD)),
        careful = Tone(Color(0xFFFFFAF0), Color(0xFF651A0A), Color(0xFF651A0A), Color(0xFF7F2A17)),
        caution = Tone(Color(0xFFFFE9C4), Color(0xFF2A1706), Color(0xFF422708), Color(0xFF6A3708)),
        shaft = Tone(Color(0xFFF6EBD9), Color(0xFF081C28), Color(0xFF382C1D), Color(0xFF0E2A3A)),
        water = Tone(Color(0xFF21506A), Color(0xFFFFFFFF), Color(0xFFFFFFFF), Color(0xFFDCEAEE)),
        bars = Tone(Color(0xFFD0DEE0), Color(0xFF081C28), Color(0xFF12303F), Color(0xFF164258)),
    )

    /** The embers are hardly brighter: what stands out more does so because the ground is blacker. */
    val Night = Colours(
        night = true,
        outlined = true,
        page = Tone(Color(0xFF010000), Color(0xFFDC8E65), Color(0xFFD3865F), Color(0xFFA86846)),
        sheet = Tone(Color(0xFF060201), Color(0xFFDC8E65), Color(0xFFD48760), Color(0xFFAB6A48)),
        foot = Tone(Color(0xFF030100), Color(0xFFDC8E65), Color(0xFFD3865F), Color(0xFFA86846)),
        main = Tone(Color(0xFF120701), Color(0xFFDF9067), Color(0xFFD98A62), Color(0xFFB8734E)),
        plain = Tone(Color(0xFF0A0502), Color(0xFFDD8F66), Color(0xFFD68861), Color(0xFFAF6E4A)),
        chosen = Tone(Color(0xFF170A04), Color(0xFFDF9067), Color(0xFFDB8D64), Color(0xFFBF7851)),
        running = Tone(Color(0xFF010000), Color(0xFFE58B50), Color(0xFFDF854A), Color(0xFFD07C43)),
        now = Tone(Color(0xFF190802), Color(0xFFE48C57), Color(0xFFDF8A56), Color(0xFFC27842)),
        careful = Tone(Color(0xFF010000), Color(0xFFE5836A), Color(0xFFE5836A), Color(0xFFC0664E)),
        caution = Tone(Color(0xFF100902), Color(0xFFDE9259), Color(0xFFDB8F57), Color(0xFFB67546)),
        shaft = Tone(Color(0xFF050201), Color(0xFFDC8E65), Color(0xFFD48760), Color(0xFFB26E4B)),
        water = Tone(Color(0xFF180A05), Color(0xFFDF9067), Color(0xFFDF9067), Color(0xFFC9815A)),
        bars = Tone(Color(0xFF120803), Color(0xFFDF9067), Color(0xFFDB8D64), Color(0xFFBF7851)),
    )
}
