package drawwell.desktop

import drawwell.desktop.caseload.CaseloadWindow
import drawwell.desktop.pictures.Pictures
import drawwell.desktop.pictures.Rendering
import java.io.File
import kotlin.system.exitProcess

fun main(arguments: Array<String>) {
    val options = Options.read(arguments)
    if (options.pictures != null) {
        Pictures(options.only) { name, picture -> Rendering.write(File(options.pictures, "$name.png"), picture) }.take()
        return
    }
    if (!Display.opens()) {
        System.err.println(Display.NONE)
        exitProcess(Display.UNAVAILABLE)
    }
    if (options.caseload) {
        CaseloadWindow(options).show()
    } else {
        MainWindow(options).show()
    }
}
