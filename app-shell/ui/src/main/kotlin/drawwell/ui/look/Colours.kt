package drawwell.ui.look

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.compositeOver

/** Every colour of the app, by its part and never by its hue. */
data class Colours(
    val night: Boolean,
    val page: Tone,
    /** A raised sheet: a notice, a group, a row. */
    val sheet: Tone,
    /** The foot of the screen. */
    val foot: Tone,
    val main: Tone,
    val plain: Tone,
    val chosen: Tone,
    /** What runs now, as words and lines on the page. */
    val running: Tone,
    /** What ends what runs now. */
    val now: Tone,
    val careful: Tone,
    val caution: Tone,
    /** An empty column, and the lines on it. */
    val shaft: Tone,
    /** A filled column, and what is drawn over it. */
    val water: Tone,
    /** Bars of days and hours, calm enough for the course in its ink to be what is seen. */
    val bars: Tone,
    /** Whether all that is raised shows its edge, where the grounds are too alike to tell. */
    val outlined: Boolean = false,
) {
    /** The pen for textures: fine lines that must be seen without a fill behind them. */
    val texture: Color get() = if (night) shaft.edge else water.ground

    /** The range of the course: water seen through the bars. */
    val ribbon: Color get() = water.ground.copy(alpha = VEIL).compositeOver(bars.ground)

    /** A code to be scanned: dark on light also by night, where the light is an ember's. */
    val code: Tone
        get() = if (night) Tone(page.soft, page.ground, page.ground, page.ground) else Tone(sheet.ground, page.ink, page.ink, page.ink)

    /** Every tone with its name, for the tests. */
    val tones: Map<String, Tone>
        get() = mapOf(
            "page" to page, "sheet" to sheet, "foot" to foot, "main" to main, "plain" to plain, "chosen" to chosen,
            "running" to running, "now" to now, "careful" to careful, "caution" to caution, "shaft" to shaft, "water" to water,
            "bars" to bars,
        )

    companion object {
        fun of(night: Boolean, higherContrast: Boolean): Colours = when {
            higherContrast -> if (night) HigherContrast.Night else HigherContrast.Light
            else -> if (night) Night else Light
        }

        /** Linen, clay and deep well water. */
        val Light = Colours(
            night = false,
            page = Tone(Color(0xFFF4ECDF), Color(0xFF142B38), Color(0xFF62523F), Color(0xFF86725A)),
            sheet = Tone(Color(0xFFFBF6EC), Color(0xFF142B38), Color(0xFF655542), Color(0xFF8C7860)),
            foot = Tone(Color(0xFFEBDFCD), Color(0xFF142B38), Color(0xFF5C4C3A), Color(0xFF7F6B54)),
            main = Tone(Color(0xFF17394C), Color(0xFFFBF4E7), Color(0xFFD5DEDC), Color(0xFFB2C4C9)),
            plain = Tone(Color(0xFFE6D8C3), Color(0xFF142B38), Color(0xFF584938), Color(0xFF7B6750)),
            chosen = Tone(Color(0xFF2B5368), Color(0xFFFBF4E7), Color(0xFFDCE6E6), Color(0xFFC3D3D7)),
            running = Tone(Color(0xFFF4ECDF), Color(0xFF8F3F14), Color(0xFF8F3F14), Color(0xFFA84A1A)),
            now = Tone(Color(0xFF964417), Color(0xFFFFF5E8), Color(0xFFFBE3CC), Color(0xFFF2CBA8)),
            careful = Tone(Color(0xFFF4ECDF), Color(0xFF7A2A17), Color(0xFF7A2A17), Color(0xFF9C4A33)),
            caution = Tone(Color(0xFFF6DFB9), Color(0xFF3B2410), Color(0xFF553618), Color(0xFF8A4B12)),
            shaft = Tone(Color(0xFFE7DAC6), Color(0xFF142B38), Color(0xFF5A4B3A), Color(0xFF17394C)),
            water = Tone(Color(0xFF44758C), Color(0xFFFFFBF3), Color(0xFFFFFBF3), Color(0xFFDDE8EA)),
            bars = Tone(Color(0xFFC2D1D2), Color(0xFF142B38), Color(0xFF2C4B5A), Color(0xFF2F6379)),
        )

        /** Embers: nothing in it lights a room. */
        val Night = Colours(
            night = true,
            page = Tone(Color(0xFF0A0605), Color(0xFFC27650), Color(0xFFAF6946), Color(0xFF8A5236)),
            sheet = Tone(Color(0xFF120B08), Color(0xFFC27650), Color(0xFFB06A48), Color(0xFF8D5438)),
            foot = Tone(Color(0xFF0E0807), Color(0xFFC27650), Color(0xFFAF6946), Color(0xFF8A5236)),
            main = Tone(Color(0xFF3A1C0C), Color(0xFFDB8D62), Color(0xFFCB8059), Color(0xFFD08259)),
            plain = Tone(Color(0xFF1A100B), Color(0xFFC57851), Color(0xFFB46E4B), Color(0xFF91573B)),
            chosen = Tone(Color(0xFF311B10), Color(0xFFD6895F), Color(0xFFC98057), Color(0xFFB06A48)),
            running = Tone(Color(0xFF0A0605), Color(0xFFDA7F45), Color(0xFFC4733F), Color(0xFFC4703A)),
            now = Tone(Color(0xFF371406), Color(0xFFDB8450), Color(0xFFCC7C50), Color(0xFFDA7F45)),
            careful = Tone(Color(0xFF0A0605), Color(0xFFC9684C), Color(0xFFC9684C), Color(0xFF974A35)),
            caution = Tone(Color(0xFF231506), Color(0xFFCB8650), Color(0xFFBF7D4B), Color(0xFFA0683D)),
            shaft = Tone(Color(0xFF150D0A), Color(0xFFC27650), Color(0xFFB26C49), Color(0xFF96593C)),
            water = Tone(Color(0xFF3A1F14), Color(0xFFDB9066), Color(0xFFDB9066), Color(0xFFC07850)),
            bars = Tone(Color(0xFF22120B), Color(0xFFDB9066), Color(0xFFC27A52), Color(0xFF9A5C3E)),
        )

        private const val VEIL = 0.4f
    }
}
