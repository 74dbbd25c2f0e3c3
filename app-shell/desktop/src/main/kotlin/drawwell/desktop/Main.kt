package drawwell.desktop

import drawwell.desktop.caseload.CaseloadWindow
import drawwell.desktop.pictures.Pictures

fun main(arguments: Array<String>) {
    val options = Options.read(arguments)
    if (options.pictures != null) {
        Pictures(options.pictures).take(options.only)
    } else if (options.caseload) {
        CaseloadWindow(options).show()
    } else {
        MainWindow(options).show()
    }
}
